using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Shapes;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>A label that fits.</summary>
/// <param name="Pages">One page; a leaflet has a front and an inside.</param>
/// <param name="Shape">Its shape.</param>
/// <param name="XHeight">Height of a lower-case x of its smallest text.</param>
/// <param name="Pictogram">Side of its pictograms.</param>
/// <param name="Band">The sizes that the law asks for.</param>
/// <param name="Notes">What a reviewer should know about the choice.</param>
/// <param name="LeftOff">Statements left off because the package is small and the text would not fit with them.</param>
public sealed record FittedLabel(
    IReadOnlyList<Scene> Pages,
    LabelShape Shape,
    Millimetres XHeight,
    Millimetres Pictogram,
    SizeBand Band,
    IReadOnlyList<string> Notes,
    IReadOnlyList<StatementChoice> LeftOff
) : LabelAttempt(Shape)
{
    /// <summary>The first page.</summary>
    public Scene Scene => Pages[0];
}
