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
