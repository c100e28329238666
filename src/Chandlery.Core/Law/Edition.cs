namespace Chandlery.Core.Law;

/// <summary>What kind of label an edition asks for.</summary>
public enum LabelKind
{
    /// <summary>CLP, with its supplemental statements and small-package relief.</summary>
    Clp,

    /// <summary>The elements of the GHS.</summary>
    Ghs,

    /// <summary>A consumer product that carries no GHS label; its classification is for the workplace.</summary>
    Consumer,
}

/// <summary>Something that a label needs or does not need.</summary>
/// <param name="Needed">Whether it does.</param>
/// <param name="Clause">Where that stands.</param>
public sealed record Requirement(bool Needed, string Clause);

/// <summary>What may be left off small packages for some classes.</summary>
/// <param name="Hazards">The classes.</param>
/// <param name="HazardStatement">Whether the hazard statement may go.</param>
/// <param name="Precautionary">Whether the precautionary statements may go.</param>
/// <param name="NotForPublic">True when it may only where the candle is not for the public, which candles always are here.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record Relief(
    IReadOnlyList<HazardCategory> Hazards,
    bool HazardStatement,
    bool Precautionary,
    bool NotForPublic,
    string Clause
);

/// <summary>Relief for small packages.</summary>
/// <param name="UpTo">Largest capacity (inclusive).</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="Rows">What may be left off.</param>
public sealed record SmallPackageRules(Quantities.Millilitres UpTo, string Clause, IReadOnlyList<Relief> Rows);

/// <summary>The law of a group of places, as data.</summary>
/// <param name="Id">Short name, the folder's.</param>
/// <param name="Name">Full name.</param>
/// <param name="LookedUp">When its sources were last looked up.</param>
/// <param name="Sources">What it was taken from.</param>
/// <param name="Covers">What it answers.</param>
/// <param name="DoesNotCover">What it leaves to others.</param>
/// <param name="Rules">Classification rules.</param>
/// <param name="NotComputed">Hazards that are not computed.</param>
/// <param name="Elements">Label elements by category.</param>
/// <param name="Pictograms">Precedence of pictograms.</param>
/// <param name="Statements">Precedence of statements.</param>
/// <param name="NamesNormallyEnough">How many names of substances are normally enough.</param>
/// <param name="NamingClause">Where naming stands.</param>
/// <param name="Precautions">Precautionary statements.</param>
/// <param name="Formats">The look of labels.</param>
/// <param name="LabelKind">What kind of label it asks for.</param>
/// <param name="HarmonisedClassesBind">True where CLP Annex VI binds; false where it is only evidence.</param>
/// <param name="Ufi">Whether a candle that is hazardous to health needs a UFI.</param>
/// <param name="EmergencyTelephone">Whether the label needs an emergency telephone number.</param>
/// <param name="SmallPackages">Relief for small packages.</param>
/// <param name="SafetySheet">When a safety data sheet is due and what it holds.</param>
public sealed record Edition(
    string Id,
    string Name,
    DateOnly LookedUp,
    IReadOnlyList<string> Sources,
    IReadOnlyList<string> Covers,
    IReadOnlyList<string> DoesNotCover,
    IReadOnlyList<ClassRule> Rules,
    IReadOnlyList<NotComputed> NotComputed,
    IReadOnlyList<LabelElement> Elements,
    IReadOnlyList<PictogramPrecedence> Pictograms,
    IReadOnlyList<StatementPrecedence> Statements,
    int NamesNormallyEnough,
    string NamingClause,
    PrecautionRules Precautions,
    LabelFormats Formats,
    LabelKind LabelKind,
    bool HarmonisedClassesBind,
    Requirement Ufi,
    Requirement EmergencyTelephone,
    SmallPackageRules SmallPackages,
    SafetySheetRules SafetySheet
)
{
    /// <summary>The highest number of a hazard category that the rules name.</summary>
    public int HighestCategory { get; } =
        Rules
            .OfType<LimitRule>()
            .SelectMany(r => r.Rungs.Concat(r.WhereAddingMayFail?.Rungs ?? []))
            .SelectMany(r => r.Terms.SelectMany(t => t.Hazards).Append(r.Result))
            .Concat(Rules.OfType<LimitRule>().SelectMany(r => r.Elicitation?.Limits.Select(l => l.Key) ?? []))
            .Select(h => h.Index)
            .DefaultIfEmpty(0)
            .Max();
}

/// <summary>A place of sale.</summary>
/// <param name="Code">Country code.</param>
/// <param name="Name">English name.</param>
/// <param name="EditionId">The edition that rules there.</param>
/// <param name="Languages">Languages that a label needs.</param>
/// <param name="EitherOf">True when one of the languages is enough.</param>
public sealed record Place(string Code, string Name, string EditionId, IReadOnlyList<string> Languages, bool EitherOf);

/// <summary>An entry of the list of substances: harmonised, or known to have none.</summary>
/// <param name="Names">Names, the preferred one first.</param>
/// <param name="CasNumbers">All CAS numbers of the entry.</param>
/// <param name="EcNumbers">EC numbers of the entry.</param>
/// <param name="IndexNumber">Annex VI index number; null when not known or none.</param>
/// <param name="Claims">Harmonised classes; null when the substance has no harmonised entry.</param>
/// <param name="Limits">Harmonised specific limits.</param>
/// <param name="AcuteM">Harmonised M-factor, acute.</param>
/// <param name="ChronicM">Harmonised M-factor, chronic.</param>
/// <param name="Toxicity">Harmonised acute toxicity estimates.</param>
/// <param name="InForce">When the entry holds.</param>
/// <param name="Act">The act that brought it.</param>
/// <param name="Confidence">How the row was checked.</param>
/// <param name="NonAdditiveKind">Kind of substance whose irritation may not add up, such as aldehyde; null for others.</param>
public sealed record SubstanceEntry(
    IReadOnlyList<string> Names,
    IReadOnlyList<string> CasNumbers,
    IReadOnlyList<string> EcNumbers,
    string? IndexNumber,
    IReadOnlyList<Declared.HazardClaim>? Claims,
    IReadOnlyList<Declared.SpecificLimit> Limits,
    double? AcuteM,
    double? ChronicM,
    IReadOnlyList<Declared.ToxicityEstimate> Toxicity,
    InForce InForce,
    string Act,
    string Confidence,
    string? NonAdditiveKind
);

/// <summary>The substances that are known beyond what suppliers declare.</summary>
public sealed class SubstanceList
{
    private readonly Dictionary<string, List<SubstanceEntry>> byCas = [];

    private readonly IReadOnlyDictionary<string, string> allergenNames;

    /// <summary>Builds the list.</summary>
    /// <param name="entries">Substances with and without harmonised entries.</param>
    /// <param name="allergenNames">Names of fragrance allergens in the European Union's cosmetics law, by CAS number.</param>
    public SubstanceList(IReadOnlyList<SubstanceEntry> entries, IReadOnlyDictionary<string, string> allergenNames)
    {
        Entries = entries;
        this.allergenNames = allergenNames;
        foreach (SubstanceEntry entry in entries)
        {
            foreach (string cas in entry.CasNumbers)
            {
                if (!byCas.TryGetValue(cas, out List<SubstanceEntry>? list))
                {
                    byCas[cas] = list = [];
                }

                list.Add(entry);
            }
        }
    }

    /// <summary>All entries.</summary>
    public IReadOnlyList<SubstanceEntry> Entries { get; }

    /// <summary>The name of a fragrance allergen, or null when the substance is none.</summary>
    public string? AllergenName(Declared.CasNumber? cas) => cas is null ? null : allergenNames.GetValueOrDefault(cas.Text);

    /// <summary>The entry that holds on that day, or null when the substance is not listed.</summary>
    public SubstanceEntry? Find(Declared.CasNumber? cas, DateOnly day) =>
        cas is not null && byCas.TryGetValue(cas.Text, out List<SubstanceEntry>? list) ? list.FirstOrDefault(e => e.InForce.On(day)) : null;
}
