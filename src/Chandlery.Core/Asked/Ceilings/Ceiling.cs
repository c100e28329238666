using Chandlery.Core.Quantities;

namespace Chandlery.Core.Asked.Ceilings;

/// <summary>The highest load before something changes.</summary>
/// <param name="Fraction">Where on the line, 0 to 1.</param>
/// <param name="OfWax">Oil per 100 parts of wax in the scented melt.</param>
/// <param name="OfMelt">Oil in 100 parts of the scented melt.</param>
/// <param name="OfCandle">Oil in 100 parts of the finished candle.</param>
/// <param name="Varied">The varied oil's own figure: its percent of the melt, or of the blend.</param>
/// <param name="Consequences">What changes just above it.</param>
public sealed record Ceiling(
    double Fraction,
    MassPercent OfWax,
    MassPercent OfMelt,
    MassPercent OfCandle,
    MassPercent Varied,
    IReadOnlyList<Consequence> Consequences
);
