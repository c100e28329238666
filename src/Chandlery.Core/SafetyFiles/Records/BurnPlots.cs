using Chandlery.Core.Declared;
using Chandlery.Core.SafetyDataSheets;

namespace Chandlery.Core.SafetyFiles.Records;

/// <summary>Burn tests as plots over the hours that a sample had burnt.</summary>
internal static class BurnPlots
{
    /// <summary>The plots of a test: flame, melt pool, vessel.</summary>
    public static SheetPlots Of(Test test) =>
        new(
            $"Plots of test {test.Id} over hours: flame height, melt pool and vessel, a line for each of {test.Samples.Count} samples. The table behind them holds every figure.",
            "hours burnt in all",
            [
                new SheetPlot("Flame height, mm", test.Limits.Flame?.Value, Lines(test, b => b.Flame?.Value)),
                new SheetPlot("Melt pool, mm", null, Lines(test, b => b.Pool?.Value)),
                .. test.Vessel is null
                    ? Array.Empty<SheetPlot>()
                    : [new SheetPlot("Vessel, °C", test.Limits.VesselHeat?.Value, Lines(test, b => b.VesselHeat?.Value))],
            ]
        );

    private static IReadOnlyList<SheetPlotLine> Lines(Test test, Func<Burn, double?> measured) =>
        [.. test.Samples.Select(s => new SheetPlotLine($"sample {s.Name}", [.. Points(s, measured)]))];

    // The highest of a burn stands at its end.
    private static IEnumerable<(double, double?)> Points(BurnSample sample, Func<Burn, double?> measured)
    {
        double hours = 0;
        foreach (Burn burn in sample.Burns)
        {
            hours += burn.Hours;
            yield return (hours, measured(burn));
        }
    }
}
