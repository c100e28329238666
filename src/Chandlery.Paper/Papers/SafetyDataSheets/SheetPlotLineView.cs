using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.SafetyDataSheets;

/// <summary>A line of a plot.</summary>
/// <param name="Name">Of what.</param>
/// <param name="Points">Its points with spaces, each where and how much; nothing behind the colon where nothing was measured.</param>
internal sealed record SheetPlotLineView(string Name, string Points) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("name", Name), ("points", Points)];

    /// <summary>The view of a line.</summary>
    public static SheetPlotLineView Of(SheetPlotLine line) => new(line.Name, string.Join(' ', line.Points.Select(Point)));

    private static string Point((double At, double? Value) point) =>
        $"{Figures.Plain(point.At)}:{(point.Value is { } value ? Figures.Plain(value) : "")}";
}
