using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>A band of one measure of the package, with the height of its figures.</summary>
/// <param name="Measure">What is measured.</param>
/// <param name="UpTo">Largest value, in the measure's unit; null for the last band.</param>
/// <param name="Height">Height of the figures.</param>
public sealed record FigureBand(FigureMeasure Measure, double? UpTo, Millimetres Height);
