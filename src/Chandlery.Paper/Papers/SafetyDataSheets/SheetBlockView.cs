using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.SafetyDataSheets;

/// <summary>A part of a subsection. What its kind does not have is empty.</summary>
/// <param name="Kind">text, strong, pictograms, table, plots or drawing.</param>
/// <param name="Text">The text.</param>
/// <param name="Codes">Codes of the pictograms, with spaces; name of the drawing.</param>
/// <param name="Widths">Shares of the columns' widths, with spaces.</param>
/// <param name="Heads">Headings of the columns.</param>
/// <param name="Rows">Rows of cells.</param>
/// <param name="Axis">What runs to the right in its plots.</param>
/// <param name="Plots">Its plots.</param>
internal sealed record SheetBlockView(
    string Kind,
    string Text,
    string Codes,
    string Widths,
    IReadOnlyList<string> Heads,
    IReadOnlyList<IReadOnlyList<string>> Rows,
    string Axis,
    IReadOnlyList<SheetPlotView> Plots
) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("kind", Kind),
            ("text", Text),
            ("codes", Codes),
            ("widths", Widths),
            ("heads", Heads),
            ("rows", Rows),
            ("axis", Axis),
            ("plots", Plots),
        ];

    /// <summary>The view of a block.</summary>
    public static SheetBlockView Of(SheetBlock block) =>
        block switch
        {
            SheetText text => new SheetBlockView(text.Strong ? "strong" : "text", text.Text, "", "", [], [], "", []),
            SheetPictograms pictograms => new SheetBlockView("pictograms", "", string.Join(' ', pictograms.Codes), "", [], [], "", []),
            SheetTable table => new SheetBlockView("table", "", "", string.Join(' ', table.Widths), table.Heads, table.Rows, "", []),
            SheetDrawing drawing => new SheetBlockView("drawing", drawing.About, drawing.Name, "", [], [], "", []),
            SheetPlots plots => new SheetBlockView(
                "plots",
                plots.About,
                "",
                "",
                [],
                [],
                plots.Axis,
                [.. plots.Plots.Select(SheetPlotView.Of)]
            ),
            _ => throw new InvalidOperationException($"no view of {block.GetType().Name}"),
        };
}
