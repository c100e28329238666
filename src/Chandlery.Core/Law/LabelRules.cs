using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>What a category puts on the label.</summary>
/// <param name="Hazard">The category.</param>
/// <param name="Pictogram">GHS code, or null.</param>
/// <param name="SignalWord">Danger, Warning, or null.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record LabelElement(HazardCategory Hazard, string? Pictogram, string? SignalWord, string Clause);

/// <summary>A pictogram that displaces another.</summary>
/// <param name="WhenPresent">Pictogram that must be there.</param>
/// <param name="WhenStatement">Statement that must be there as well; null when none.</param>
/// <param name="LeaveOff">Pictogram that goes.</param>
/// <param name="CalledForOnlyBy">It goes only when nothing but these statements calls for it; empty when whatever does.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record PictogramPrecedence(
    string WhenPresent,
    string? WhenStatement,
    string LeaveOff,
    IReadOnlyList<string> CalledForOnlyBy,
    string Clause
);

/// <summary>A statement that makes others needless, or several that become one.</summary>
/// <param name="All">Statements that must be there.</param>
/// <param name="Use">Statement that is printed.</param>
/// <param name="LeaveOff">Statements that are left off.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record StatementPrecedence(IReadOnlyList<string> All, string Use, IReadOnlyList<string> LeaveOff, string Clause);

/// <summary>Whether an offered precautionary statement suits a candle for the public.</summary>
public enum PrecautionUse
{
    /// <summary>Printed even beyond the usual number.</summary>
    Must,

    /// <summary>Printed when it is among the most important.</summary>
    Keep,

    /// <summary>Not for the public's candle.</summary>
    Drop,
}

/// <summary>A precautionary statement that the law offers.</summary>
/// <param name="Code">Code, combined where the law combines.</param>
/// <param name="For">Hazard statements that it is offered for.</param>
/// <param name="Rank">The lower, the more important.</param>
/// <param name="Use">How it is treated.</param>
/// <param name="CoveredBy">Statement that makes it needless; null when none.</param>
/// <param name="Because">The reason, for the trace.</param>
public sealed record PrecautionOffer(
    string Code,
    IReadOnlyList<string> For,
    int Rank,
    PrecautionUse Use,
    string? CoveredBy,
    string Because
);

/// <summary>The choice of precautionary statements.</summary>
/// <param name="Most">How many are normally printed.</param>
/// <param name="MostClause">Where that stands.</param>
/// <param name="Disposal">The disposal statement.</param>
/// <param name="DisposalClause">Where that stands.</param>
/// <param name="Offers">All offers.</param>
public sealed record PrecautionRules(
    int Most,
    string MostClause,
    string Disposal,
    string DisposalClause,
    IReadOnlyList<PrecautionOffer> Offers
);

/// <summary>Whether a rule is law.</summary>
public enum LegalStatus
{
    /// <summary>Law, in force or with a date.</summary>
    Law,

    /// <summary>Agreed but not yet law when last looked up: shown, never applied.</summary>
    Expected,
}

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

/// <summary>How a label must look in a period.</summary>
/// <param name="Id">Short name.</param>
/// <param name="Status">Law or expected.</param>
/// <param name="From">First day.</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="Bands">Sizes by capacity.</param>
/// <param name="XHeightClause">Where the letter height stands.</param>
/// <param name="LineSpacing">Least distance of lines as a multiple of the type size.</param>
/// <param name="LineSpacingClause">Where that stands.</param>
public sealed record LabelFormat(
    string Id,
    LegalStatus Status,
    DateOnly From,
    string Clause,
    IReadOnlyList<SizeBand> Bands,
    string XHeightClause,
    double LineSpacing,
    string LineSpacingClause
)
{
    /// <summary>The sizes for a package of this capacity.</summary>
    public SizeBand BandFor(Millilitres capacity) => Bands.First(b => b.UpTo is not { } upTo || capacity.Value <= upTo.Value);
}

/// <summary>A band of quantities, or of sizes of the main panel, with the height of its figures.</summary>
/// <param name="UpTo">Largest quantity; null when the band is by area or is the last.</param>
/// <param name="UpToSquareInches">Largest area of the main panel; null when the band is by quantity or is the last.</param>
/// <param name="Height">Height of the figures.</param>
public sealed record FigureBand(Grams? UpTo, double? UpToSquareInches, Millimetres Height);

/// <summary>Height of the figures of the nominal quantity.</summary>
/// <param name="Clause">Where it stands.</param>
/// <param name="Bands">Bands, smallest first.</param>
public sealed record QuantityFigures(string Clause, IReadOnlyList<FigureBand> Bands)
{
    private const double SquareMmPerSquareInch = 25.4 * 25.4;

    /// <summary>The share of a cylinder's side that counts as its main panel (16 CFR 500.3).</summary>
    private const double PanelShareOfSide = 0.4;

    /// <summary>The least height for this quantity in this vessel.</summary>
    public Millimetres HeightFor(Grams quantity, Vessel vessel)
    {
        // A vessel of unknown size gets the tallest figures: the stricter side.
        double area = vessel.Outer is { } outer
            ? PanelShareOfSide * outer.Height.Value * outer.PerimeterMillimetres / SquareMmPerSquareInch
            : double.PositiveInfinity;
        return Bands
            .First(b => (b.UpTo is null && b.UpToSquareInches is null) || quantity.Value <= b.UpTo?.Value || area <= b.UpToSquareInches)
            .Height;
    }
}

/// <summary>Everything about the look of labels.</summary>
/// <param name="Formats">By date.</param>
/// <param name="Quantity">Figures of the nominal quantity.</param>
/// <param name="OfferedSizes">Label sizes to choose from when the maker asks for none, smallest first.</param>
public sealed record LabelFormats(IReadOnlyList<LabelFormat> Formats, QuantityFigures Quantity, IReadOnlyList<LabelSize> OfferedSizes)
{
    /// <summary>The format that is law on that day.</summary>
    public LabelFormat On(DateOnly day) =>
        Formats.Where(f => f.Status == LegalStatus.Law && f.From <= day).MaxBy(f => f.From)
        ?? throw new InvalidOperationException($"no label format holds on {day:yyyy-MM-dd}");

    /// <summary>Formats that come later than that day, law and expected, in order of date.</summary>
    public IEnumerable<LabelFormat> After(DateOnly day) => Formats.Where(f => f.From > day).OrderBy(f => f.From);
}
