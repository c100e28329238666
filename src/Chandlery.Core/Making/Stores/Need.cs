namespace Chandlery.Core.Making.Stores;

/// <summary>How much of a material something takes.</summary>
/// <param name="Material">The material.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Amount">How much, in the material's unit; null when not known.</param>
public sealed record Need(Material Material, string Name, double? Amount);
