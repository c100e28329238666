using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

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
