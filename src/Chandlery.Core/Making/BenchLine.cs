namespace Chandlery.Core.Making;

/// <summary>What is weighed for a number of candles, as told to programs. Masses are grams, temperatures degrees Celsius.</summary>
public sealed record BenchLine
{
    /// <summary>Name of the declaration.</summary>
    public required string Candle { get; init; }

    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>Allowance for what stays in the jug, percent.</summary>
    public required double WastePercent { get; init; }

    /// <summary>Mass of everything.</summary>
    public required double TotalGrams { get; init; }

    /// <summary>What goes into the melt, or into the liquid, in the order of weighing.</summary>
    public required IReadOnlyList<BenchPortion> First { get; init; }

    /// <summary>What goes into a second pour of plain wax; empty where there is none.</summary>
    public required IReadOnlyList<BenchPortion> Second { get; init; }

    /// <summary>What goes into each vessel, the candle itself first; empty for liquids.</summary>
    public required IReadOnlyList<BenchSize> Sizes { get; init; }

    /// <summary>Temperatures, in the order in which they happen; empty for liquids.</summary>
    public required IReadOnlyList<BenchStep> Temperatures { get; init; }

    /// <summary>Flash points of liquids, in words; empty for what is poured warm, whose steps name them.</summary>
    public required IReadOnlyList<string> FlashPoints { get; init; }

    /// <summary>The line of a pour.</summary>
    /// <param name="id">Name of the declaration.</param>
    /// <param name="plan">The plan.</param>
    public static BenchLine Of(string id, PouringPlan plan) =>
        new()
        {
            Candle = id,
            Count = plan.Count,
            WastePercent = plan.WastePercent,
            TotalGrams = Rounded(plan.Total.Value),
            First = [.. plan.FirstPour.Select(Portion)],
            Second = [.. plan.TopUp.Select(Portion)],
            Sizes =
            [
                .. plan.Sizes.Select(s => new BenchSize(
                    s.Name,
                    s.Count,
                    s.Pieces,
                    Rounded(s.FirstInPiece.Value),
                    Rounded(s.TopUpInPiece.Value),
                    s.Gap
                )),
            ],
            Temperatures = [.. plan.Temperatures.Select(t => new BenchStep(t.Step, t.Temperature?.Value, t.Note))],
            FlashPoints = [],
        };

    /// <summary>The line of a liquid.</summary>
    /// <param name="id">Name of the declaration.</param>
    /// <param name="plan">The plan.</param>
    public static BenchLine Of(string id, MixingPlan plan) =>
        new()
        {
            Candle = id,
            Count = plan.Count,
            WastePercent = plan.WastePercent,
            TotalGrams = Rounded(plan.Total.Value),
            First = [.. plan.Portions.Select(Portion)],
            Second = [],
            Sizes = [],
            Temperatures = [],
            FlashPoints = plan.FlashPoints,
        };

    private static BenchPortion Portion(Portion p) => new(p.Name, p.Kind, Rounded(p.Mass.Value));

    // No scale at a bench shows a milligram.
    private static double Rounded(double grams) => Math.Round(grams, 3);
}
