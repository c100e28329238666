using Chandlery.Core.Assessed;
using Chandlery.Core.Classified;
using Chandlery.Core.Hazards;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>What a safety data sheet is made of: the candle, the language, and what several subsections ask for.</summary>
internal sealed class SheetContext
{
    public SheetContext(Assessment assessment, Language language, SheetWords words, Lawbook lawbook)
    {
        Assessment = assessment;
        Language = language;
        Texts = new SheetTexts(words, lawbook.SheetSentences.Phrases, language.Local, assessment.Kind, language.Figures);
        Rules = assessment.Edition.SafetySheet;
        Abbreviations =
        [
            .. lawbook.SheetSentences.Abbreviations.Concat(Rules.Abbreviations).OrderBy(s => s.Label, StringComparer.OrdinalIgnoreCase),
        ];
        Named = SheetDuties.Named(Rules, assessment.Substances);

        // The UN Model Regulations hold everywhere, also where an edition leaves the environment out.
        Classification forTransport = lawbook
            .Edition(Rules.Transport.ClassifiedBy)
            .On(assessment.AsOf)
            .ForState(assessment.Kind.State)
            .Judge(assessment.Composition)
            .Classification;
        Transport = SheetTransport.Of(
            Rules.Transport,
            forTransport,
            assessment.Kind.State,
            assessment.Candle.NetMass,
            assessment.Candle.NetVolume
        );
    }

    /// <summary>The candle.</summary>
    public Assessment Assessment { get; }

    /// <summary>The language.</summary>
    public Language Language { get; }

    /// <summary>Texts in the language, English where it lacks them.</summary>
    public SheetTexts Texts { get; }

    /// <summary>What the law says on the sheet.</summary>
    public SafetySheetRules Rules { get; }

    /// <summary>Abbreviations, in the order of print.</summary>
    public IReadOnlyList<SheetSentence> Abbreviations { get; }

    /// <summary>The substances that section 3 names.</summary>
    public IReadOnlyList<Substance> Named { get; }

    /// <summary>How the candle travels.</summary>
    public SheetTransport Transport { get; }

    /// <summary>How figures are written.</summary>
    public FigureFormat Figures => Language.Figures;

    /// <summary>The classification rules that hold for an area of hazards.</summary>
    public IEnumerable<ClassRule> RulesFor(HazardArea area) => Assessment.Verdict.Law.Rules.Where(r => r.Results.First().Area == area);

    /// <summary>The rules of an area that gave no class.</summary>
    public IReadOnlyList<ClassRule> NotMet(HazardArea area) => [.. RulesFor(area).Where(r => Assessment.Verdict.ResultOf(r) is null)];

    /// <summary>The classes of an area.</summary>
    public IReadOnlyList<ClassResult> Results(HazardArea area) =>
        [.. RulesFor(area).Select(Assessment.Verdict.ResultOf).OfType<ClassResult>()];

    /// <summary>Hazards for health that are not computed.</summary>
    public IEnumerable<NotComputed> HealthNotComputed =>
        Assessment.Verdict.Law.NotComputed.Where(n => n.Hazards[0].Area == HazardArea.Health);

    /// <summary>Substances with one of these hazards, at whatever share.</summary>
    public IReadOnlyList<Substance> With(IEnumerable<HazardCategory> hazards) =>
        [.. Assessment.Substances.Where(s => s.Hazards.Any(h => hazards.Contains(h.Category)))];

    /// <summary>Substances of concern with one of these hazards that reach the law's share.</summary>
    public IReadOnlyList<Substance> Concerning(IEnumerable<HazardCategory> hazards) =>
        [.. With(hazards).Where(s => s.Ingredient.WholeHigh.Reaches(Rules.Concerning.From))];

    /// <summary>The hazard statements that sections 2 and 3 name.</summary>
    public IReadOnlyList<StatementCode> StatementCodes =>
        [
            .. Assessment
                .Classification.Classes.Select(c => c.Statement)
                .Concat(Named.SelectMany(s => s.Hazards).Select(h => h.Statement))
                .Distinct()
                .OrderBy(c => c.Text, StringComparer.Ordinal),
        ];

    /// <summary>The text of a statement. Letters that say more (H361d) may lack a text of their own; then the one without them stands for it.</summary>
    public string Statement(StatementCode code) =>
        Language.Statement(code)
        ?? (code.Text.Length > 4 && StatementCode.TryParse(code.Text[..4]) is { } plain ? Language.Statement(plain) : null)
        ?? Texts.Phrase(SheetPhrase.MissingStatement, ("code", code.Text), ("language", Language.Name));

    /// <summary>A class with its statement, such as "Skin Sens. 1, H317".</summary>
    public static string ClassAndStatement(ClassResult result) => $"{Short(result.Category)}, {result.Statement}";

    /// <summary>A class without its variant, such as "Acute Tox. 4".</summary>
    public static string Short(HazardCategory category) => $"{category.ClassCode} {category.Category}".Trim();
}
