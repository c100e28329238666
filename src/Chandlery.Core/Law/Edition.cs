namespace Chandlery.Core.Law;

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
/// <param name="SensitisersAlwaysClause">Where it stands that sensitisers are all named.</param>
/// <param name="Precautions">Precautionary statements.</param>
/// <param name="Formats">The look of labels.</param>
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
    string SensitisersAlwaysClause,
    PrecautionRules Precautions,
    LabelFormats Formats
);

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
    string Confidence
);

/// <summary>The substances that are known beyond what suppliers declare.</summary>
public sealed class SubstanceList
{
    private readonly Dictionary<string, List<SubstanceEntry>> byCas = [];

    /// <summary>Builds the list.</summary>
    public SubstanceList(IReadOnlyList<SubstanceEntry> entries)
    {
        Entries = entries;
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

    /// <summary>The entry that holds on that day, or null when the substance is not listed.</summary>
    public SubstanceEntry? Find(Declared.CasNumber? cas, DateOnly day) =>
        cas is not null && byCas.TryGetValue(cas.Text, out List<SubstanceEntry>? list) ? list.FirstOrDefault(e => e.InForce.On(day)) : null;
}
