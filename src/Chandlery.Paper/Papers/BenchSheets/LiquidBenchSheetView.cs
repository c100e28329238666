using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BenchSheets;

/// <summary>The bench sheet of a liquid.</summary>
/// <param name="Name">Trade name.</param>
/// <param name="Making">How many of what are made, and how much that is.</param>
/// <param name="Stops">What stops the sale.</param>
/// <param name="Portions">What to weigh, in order.</param>
/// <param name="Load">How much oil it holds; empty for a liquid without oil.</param>
/// <param name="FlashPoints">Flash points, a sentence each.</param>
/// <param name="Vessel">What it is filled into.</param>
internal sealed record LiquidBenchSheetView(
    string Name,
    string Making,
    IReadOnlyList<string> Stops,
    IReadOnlyList<PortionView> Portions,
    string Load,
    IReadOnlyList<string> FlashPoints,
    string Vessel
) : ITemplateView
{
    /// <inheritdoc/>
    public string Template => "bench-sheet-liquid.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("name", Name),
            ("making", Making),
            ("stops", Stops),
            ("portions", Portions),
            ("load", Load),
            ("flash_points", FlashPoints),
            ("vessel", Vessel),
        ];
}
