using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>Labels on a sheet: their grid.</summary>
/// <param name="Page">Page size.</param>
/// <param name="Columns">Columns.</param>
/// <param name="Rows">Rows.</param>
/// <param name="Left">Left edge of the first label.</param>
/// <param name="Top">Upper edge of the first label.</param>
/// <param name="PitchX">Distance from one label's left edge to the next.</param>
/// <param name="PitchY">Distance from one label's upper edge to the next.</param>
public sealed record SheetGrid(
    LabelSize Page,
    int Columns,
    int Rows,
    Millimetres Left,
    Millimetres Top,
    Millimetres PitchX,
    Millimetres PitchY
)
{
    /// <summary>Labels on a page.</summary>
    public int Count => Columns * Rows;
}
