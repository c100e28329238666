using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.SafetyDataSheets;

/// <summary>A plot.</summary>
/// <param name="Title">What runs upwards.</param>
/// <param name="Limit">What no value shall exceed; empty for none.</param>
/// <param name="Lines">Its lines.</param>
internal sealed record SheetPlotView(string Title, string Limit, IReadOnlyList<SheetPlotLineView> Lines) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("title", Title), ("limit", Limit), ("lines", Lines)];

    /// <summary>The view of a plot.</summary>
    public static SheetPlotView Of(SheetPlot plot) =>
        new(plot.Title, plot.Limit is { } limit ? Figures.Plain(limit) : "", [.. plot.Lines.Select(SheetPlotLineView.Of)]);
}
