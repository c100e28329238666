using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>What is poured at once.</summary>
/// <param name="Count">How many of the candle, 1 to <see cref="PouringPlan.MostCandles"/>.</param>
/// <param name="WastePercent">Allowance for what stays in the jug, percent of the mass, 0 to 50.</param>
public sealed record PourOrder(int Count, double WastePercent)
{
    /// <summary>How far below the fill line the first pour ends; null where nobody chose it.</summary>
    public Millimetres? Gap { get; init; }

    /// <summary>Other candles that are poured from the same melt.</summary>
    public IReadOnlyList<PourSize> Also { get; init; } = [];

    /// <summary>Melt that was left over and is used again; null for none.</summary>
    public LeftoverMelt? Leftover { get; init; }
}
