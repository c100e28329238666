using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.SafetyDataSheets;

/// <summary>A part of a subsection. What its kind does not have is empty.</summary>
internal sealed record SheetBlockView : IView
{
    private static readonly SheetBlockView Empty = new()
    {
        Kind = "",
        Text = "",
        Codes = "",
        Widths = "",
        Heads = [],
        Rows = [],
        Axis = "",
        Plots = [],
    };

    /// <summary>text, strong, pictograms, table, plots or drawing.</summary>
    public required string Kind { get; init; }

    /// <summary>The text.</summary>
    public required string Text { get; init; }

    /// <summary>Codes of the pictograms, with spaces; name of the drawing.</summary>
    public required string Codes { get; init; }

    /// <summary>Shares of the columns' widths, with spaces.</summary>
    public required string Widths { get; init; }

    /// <summary>Headings of the columns.</summary>
    public required IReadOnlyList<string> Heads { get; init; }

    /// <summary>Rows of cells.</summary>
    public required IReadOnlyList<IReadOnlyList<string>> Rows { get; init; }

    /// <summary>What runs to the right in its plots.</summary>
    public required string Axis { get; init; }

    /// <summary>Its plots.</summary>
    public required IReadOnlyList<SheetPlotView> Plots { get; init; }

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
            SheetText text => Empty with { Kind = text.Strong ? "strong" : "text", Text = text.Text },
            SheetPictograms pictograms => Empty with { Kind = "pictograms", Codes = string.Join(' ', pictograms.Codes) },
            SheetTable table => Empty with
            {
                Kind = "table",
                Widths = string.Join(' ', table.Widths),
                Heads = table.Heads,
                Rows = table.Rows,
            },
            SheetDrawing drawing => Empty with { Kind = "drawing", Text = drawing.About, Codes = drawing.Name },
            SheetPlots plots => Empty with
            {
                Kind = "plots",
                Text = plots.About,
                Axis = plots.Axis,
                Plots = [.. plots.Plots.Select(SheetPlotView.Of)],
            },
            _ => throw new InvalidOperationException($"no view of {block.GetType().Name}"),
        };
}
