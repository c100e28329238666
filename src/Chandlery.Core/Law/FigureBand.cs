using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>A band of quantities, or of sizes of the main panel, with the height of its figures.</summary>
/// <param name="UpTo">Largest quantity; null when the band is by area or is the last.</param>
/// <param name="UpToSquareInches">Largest area of the main panel; null when the band is by quantity or is the last.</param>
/// <param name="Height">Height of the figures.</param>
public sealed record FigureBand(Grams? UpTo, double? UpToSquareInches, Millimetres Height);
