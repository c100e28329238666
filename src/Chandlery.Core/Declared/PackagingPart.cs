using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>A part of what a candle is packed in.</summary>
/// <param name="Part">What it is, such as box.</param>
/// <param name="Material">What it is made of.</param>
/// <param name="Weight">What one weighs.</param>
/// <param name="Mark">Its material code, such as PAP 21; null when not known.</param>
public sealed record PackagingPart(string Part, PackagingMaterial Material, Grams Weight, string? Mark);
