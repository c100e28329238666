namespace Chandlery.Core.Notified;

/// <summary>An ingredient as a notification to the poison centres states it.</summary>
/// <param name="Name">Name.</param>
/// <param name="Cas">CAS number, or null.</param>
/// <param name="Ec">EC number, or null.</param>
/// <param name="Band">Concentration range, percent.</param>
/// <param name="Hazards">Its classes.</param>
public sealed record PoisonFact(string Name, string? Cas, string? Ec, string Band, string Hazards);
