using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>Sizes for packages up to a capacity.</summary>
/// <param name="UpTo">Largest capacity (inclusive); null for the last band.</param>
/// <param name="Label">Smallest label.</param>
/// <param name="IfPossible">True when the law asks for the label size "if possible".</param>
/// <param name="Pictogram">Smallest side of a pictogram's square.</param>
/// <param name="PictogramIfPossible">Side that it should have if possible; the same when the law knows only one.</param>
/// <param name="XHeight">Smallest height of a lower-case x.</param>
public sealed record SizeBand(
    Millilitres? UpTo,
    LabelSize Label,
    bool IfPossible,
    Millimetres Pictogram,
    Millimetres PictogramIfPossible,
    Millimetres XHeight
);
