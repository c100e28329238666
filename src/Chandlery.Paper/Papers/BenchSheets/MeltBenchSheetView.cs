using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BenchSheets;

/// <summary>The bench sheet of wax melts: poured like a candle, with neither wick nor flame.</summary>
/// <param name="Name">Trade name.</param>
/// <param name="Making">How many of what are made, and how much that is.</param>
/// <param name="Stops">What stops the sale.</param>
/// <param name="First">What goes into the melt.</param>
/// <param name="Second">What goes into the second pour; empty when there is none of its own.</param>
/// <param name="Sizes">What goes into each shell, the product itself first.</param>
/// <param name="HasSecond">Anything when there is a second pour; empty when there is none.</param>
/// <param name="Load">How much oil it holds; empty where there is none.</param>
/// <param name="Temperatures">Temperatures.</param>
/// <param name="Times">Times.</param>
/// <param name="Shell">What it is poured into, and how full that gets.</param>
internal sealed record MeltBenchSheetView(
    string Name,
    string Making,
    IReadOnlyList<string> Stops,
    IReadOnlyList<PortionView> First,
    IReadOnlyList<PortionView> Second,
    IReadOnlyList<SizeView> Sizes,
    string HasSecond,
    string Load,
    IReadOnlyList<TemperatureView> Temperatures,
    IReadOnlyList<TimeView> Times,
    string Shell
) : ITemplateView
{
    /// <inheritdoc/>
    public string Template => "bench-sheet-melt.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("name", Name),
            ("making", Making),
            ("stops", Stops),
            ("first", First),
            ("second", Second),
            ("sizes", Sizes),
            ("has_second", HasSecond),
            ("load", Load),
            ("temperatures", Temperatures),
            ("times", Times),
            ("shell", Shell),
        ];
}
