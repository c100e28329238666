using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>A fragrance load that says which of the trade's two meanings it has.</summary>
/// <param name="Percent">The figure.</param>
/// <param name="Basis">What it is a percentage of.</param>
public sealed record FragranceLoad(MassPercent Percent, LoadBasis Basis)
{
    /// <summary>The share of oil in wax and oil alone, without extras: 10 % of the wax is 9.09 % of the candle.</summary>
    public static MassPercent WaxToCandle(MassPercent ofWax) => new(100 * ofWax.Value / (100 + ofWax.Value));

    /// <summary>The inverse of <see cref="WaxToCandle"/>.</summary>
    public static MassPercent CandleToWax(MassPercent ofCandle) => new(100 * ofCandle.Value / (100 - ofCandle.Value));

    /// <inheritdoc/>
    public override string ToString() => $"{Percent} of the {(Basis == LoadBasis.Wax ? "wax" : "candle")}";
}
