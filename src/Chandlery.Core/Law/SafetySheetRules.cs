using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>A sentence of law in our words, with its clause.</summary>
/// <param name="Says">What it means for the candle.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record DutyClause(string Says, string Clause);

/// <summary>From which share a substance with one of these hazards counts.</summary>
/// <param name="Hazards">The hazards.</param>
/// <param name="From">The share of the mixture (inclusive).</param>
/// <param name="OwnLimitTimes">A substance's own specific limit, times this, lowers the share; 0 when it does not.</param>
/// <param name="DividedBy">The M-factor that divides the share.</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="Confidence">How the row was checked.</param>
public sealed record ShareRow(
    IReadOnlyList<HazardCategory> Hazards,
    MassPercent From,
    double OwnLimitTimes,
    MWeight DividedBy,
    string Clause,
    string Confidence
)
{
    /// <summary>True when the substance reaches the row's share.</summary>
    public bool Reached(Substance substance) =>
        substance.Hazards.Any(h => Hazards.Contains(h.Category) && substance.Ingredient.WholeHigh.Reaches(Limit(h)));

    private MassPercent Limit(SubstanceHazard hazard)
    {
        double from = From.Value;
        foreach (Declared.SpecificLimit own in hazard.Limits)
        {
            from = OwnLimitTimes > 0 ? Math.Min(from, own.From.Value * OwnLimitTimes) : from;
        }

        return new MassPercent(DividedBy == MWeight.None ? from : from / hazard.M);
    }
}

/// <summary>How a candle travels.</summary>
/// <param name="Classes">Classes that make it dangerous goods.</param>
/// <param name="UnNumber">UN number.</param>
/// <param name="Name">Proper shipping name, to be followed by the names of substances.</param>
/// <param name="Class">Transport hazard class.</param>
/// <param name="PackingGroup">Packing group.</param>
/// <param name="MostNames">How many substances the name carries at most.</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="SmallUpTo">Packages up to this net mass are free.</param>
/// <param name="SmallClause">Where that stands.</param>
/// <param name="NotRegulated">What is said of a candle that is none of it.</param>
/// <param name="NotTested">What a test would have to show.</param>
public sealed record TransportRules(
    IReadOnlyList<HazardCategory> Classes,
    string UnNumber,
    string Name,
    string Class,
    string PackingGroup,
    int MostNames,
    string Clause,
    Grams SmallUpTo,
    string SmallClause,
    string NotRegulated,
    string NotTested
);

/// <summary>What an edition of the law says on safety data sheets.</summary>
/// <param name="Format">Name of the format.</param>
/// <param name="FormatClause">Where it stands.</param>
/// <param name="Without">Subsections that the format does not have.</param>
/// <param name="Headings">English headings where they differ from REACH Annex II.</param>
/// <param name="Classified">The duty for a classified candle.</param>
/// <param name="ForPublic">What holds where it is sold to the public.</param>
/// <param name="OnRequest">The duty for an unclassified candle with certain substances.</param>
/// <param name="NotDue">What holds otherwise.</param>
/// <param name="LabelNote">Why no note on the sheet goes on the label; empty where there is no such rule.</param>
/// <param name="OnRequestFrom">Those substances and shares.</param>
/// <param name="NamedFrom">From which share section 3 names a substance.</param>
/// <param name="EmergencyNumber">Whether section 1.4 needs a number.</param>
/// <param name="Transport">How it travels.</param>
public sealed record SafetySheetRules(
    string Format,
    string FormatClause,
    IReadOnlyList<string> Without,
    IReadOnlyDictionary<string, string> Headings,
    DutyClause Classified,
    DutyClause ForPublic,
    DutyClause OnRequest,
    DutyClause NotDue,
    DutyClause LabelNote,
    IReadOnlyList<ShareRow> OnRequestFrom,
    IReadOnlyList<ShareRow> NamedFrom,
    Requirement EmergencyNumber,
    TransportRules Transport
);

/// <summary>Headings and words of the sheet in one language.</summary>
/// <param name="Code">ISO 639-1 code.</param>
/// <param name="Checked">How they were checked.</param>
/// <param name="Headings">Headings by number of section or subsection.</param>
/// <param name="Words">Other words.</param>
public sealed record SheetWords(
    string Code,
    string Checked,
    IReadOnlyDictionary<string, string> Headings,
    IReadOnlyDictionary<string, string> Words
);

/// <summary>A text of the sheet that does not follow from a computation.</summary>
/// <param name="Subsection">Where it stands.</param>
/// <param name="Text">The text.</param>
/// <param name="When">Conditions of which one must hold; empty for always.</param>
/// <param name="Unless">Conditions of which none may hold.</param>
public sealed record SheetAdvice(string Subsection, string Text, IReadOnlyList<string> When, IReadOnlyList<string> Unless);
