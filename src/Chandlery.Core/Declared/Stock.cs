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

/// <summary>What labels are printed on: sheets, or a roll for a thermal printer.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Name.</param>
/// <param name="Label">Shape and size of a label.</param>
/// <param name="Bleed">How far a background may run over the label's edge.</param>
/// <param name="Sheet">The grid; null for a roll.</param>
/// <param name="RollDotsPerInch">Resolution of the roll's printer; null for sheets.</param>
public sealed record Stock(
    string Id,
    TextPlace Place,
    string Name,
    LabelRequest Label,
    Millimetres Bleed,
    SheetGrid? Sheet,
    double? RollDotsPerInch
) : IDeclaration;
