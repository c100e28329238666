namespace Chandlery.Core.Making;

/// <summary>A time to keep.</summary>
/// <param name="Step">For what.</param>
/// <param name="Time">How long, or when.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record TimeStep(string Step, string Time, string Source);
