using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>The law of a group of places, as data.</summary>
public sealed record Edition
{
    /// <summary>Short name, the folder's.</summary>
    public required string Id { get; init; }

    /// <summary>Full name.</summary>
    public required string Name { get; init; }

    /// <summary>When its sources were last looked up.</summary>
    public required DateOnly LookedUp { get; init; }

    /// <summary>What it was taken from.</summary>
    public required IReadOnlyList<string> Sources { get; init; }

    /// <summary>What it answers.</summary>
    public required IReadOnlyList<string> Covers { get; init; }

    /// <summary>What it leaves to others.</summary>
    public required IReadOnlyList<string> DoesNotCover { get; init; }

    /// <summary>Changes of the law with their days, in their order.</summary>
    public required IReadOnlyList<Amendment> Amendments { get; init; }

    /// <summary>Within which time labels must follow a new classification; null where no such rule is known.</summary>
    public required RelabellingRules? Relabelling { get; init; }

    /// <summary>Classification rules.</summary>
    public required IReadOnlyList<ClassRule> Rules { get; init; }

    /// <summary>Hazards that are not computed.</summary>
    public required IReadOnlyList<NotComputed> NotComputed { get; init; }

    /// <summary>What it says of liquids beside that; null where nothing is known.</summary>
    public required LiquidRules? Liquids { get; init; }

    /// <summary>The classification rules for a product of a state: those of liquids stand before those of every mixture.</summary>
    public IReadOnlyList<ClassRule> RulesFor(PhysicalState state) =>
        state == PhysicalState.Liquid && Liquids is { } liquids ? [.. liquids.Rules, .. Rules] : Rules;

    /// <summary>What is not computed of a product of a state.</summary>
    public IReadOnlyList<NotComputed> NotComputedFor(PhysicalState state) =>
        state == PhysicalState.Liquid && Liquids is { } liquids
            ? [.. liquids.NotComputed, .. NotComputed.Where(n => !n.Hazards.Any(h => LiquidHazards.Contains(h)))]
            : NotComputed;

    // What the rules of liquids answer, or say themselves that they do not, is not said a second time for solids.
    private IEnumerable<HazardCategory> LiquidHazards =>
        Liquids is { } liquids ? liquids.Rules.SelectMany(r => r.Results).Concat(liquids.NotComputed.SelectMany(n => n.Hazards)) : [];

    /// <summary>Label elements by category.</summary>
    public required IReadOnlyList<LabelElement> Elements { get; init; }

    /// <summary>The label elements of one category; none where it calls for none.</summary>
    public IEnumerable<LabelElement> ElementsOf(HazardCategory category) => Elements.Where(e => e.Hazard.Index == category.Index);

    /// <summary>Precedence of pictograms.</summary>
    public required IReadOnlyList<PictogramPrecedence> Pictograms { get; init; }

    /// <summary>Precedence of statements.</summary>
    public required IReadOnlyList<StatementPrecedence> Statements { get; init; }

    /// <summary>Statements that single ingredients call for.</summary>
    public required IReadOnlyList<IngredientStatement> IngredientStatements { get; init; }

    /// <summary>What a package for the public must have beside its label.</summary>
    public required IReadOnlyList<PackagingDuty> Packaging { get; init; }

    /// <summary>Precautionary statements.</summary>
    public required PrecautionRules Precautions { get; init; }

    /// <summary>Which wording is printed where the law words statements twice.</summary>
    public required IReadOnlyList<WordingChoice> Wordings { get; init; }

    /// <summary>The look of labels.</summary>
    public required LabelFormats Formats { get; init; }

    /// <summary>Whether a candle that is hazardous to health needs a UFI.</summary>
    public required Requirement Ufi { get; init; }

    /// <summary>Whether the label needs an emergency telephone number.</summary>
    public required Requirement EmergencyTelephone { get; init; }

    /// <summary>Relief for small packages.</summary>
    public required SmallPackageRules SmallPackages { get; init; }

    /// <summary>When a safety data sheet is due and what it holds.</summary>
    public required SafetySheetRules SafetySheet { get; init; }

    /// <summary>How many names of substances go on the label, and why.</summary>
    public required NamingRules Naming { get; init; }

    /// <summary>What a label is here.</summary>
    public required LabelRules Label { get; init; }

    /// <summary>Classes that may not go to the general public.</summary>
    public required IReadOnlyList<PublicBan> NotForPublic { get; init; }

    /// <summary>Papers that are not made here, since their law is not surely known.</summary>
    public required IReadOnlyList<Refusal> Refuses { get; init; }

    /// <summary>Whether only a part of the law is known, so that every paper says what it leaves to others.</summary>
    public required bool IsKnownInPart { get; init; }

    /// <summary>What is told beside the label.</summary>
    public required IReadOnlyList<Notice> Notices { get; init; }

    /// <summary>Where it stands that a mixture must be classified before it is sold.</summary>
    public required Citation ClassificationClause { get; init; }

    /// <summary>What a notification to poison centres holds; null where the edition knows none.</summary>
    public required PoisonCentreRules? PoisonCentres { get; init; }

    /// <summary>What harmonised classes are here: binding, or evidence only.</summary>
    public required HarmonisedClasses Harmonised { get; init; }

    /// <summary>Substances with harmonised classes, and others that are known.</summary>
    public required SubstanceList Substances { get; init; }

    /// <summary>Words of our own texts that are others in its places, by language.</summary>
    public required IReadOnlyDictionary<string, LocalWords> LocalWords { get; init; }

    /// <summary>A language as its places write it.</summary>
    public Language AsWritten(Language language) =>
        LocalWords.TryGetValue(language.Code, out LocalWords? local) ? language.With(local) : language;

    /// <summary>The first day for which this edition knows the law.</summary>
    public DateOnly KnownFrom => Formats.KnownFrom;

    /// <summary>The highest number of a hazard category that the rules name.</summary>
    public int HighestCategory => highestCategory.Value;

    private readonly Lazy<int> highestCategory;

    /// <summary>Makes an edition.</summary>
    public Edition() => highestCategory = new Lazy<int>(FindHighestCategory);

    private int FindHighestCategory() =>
        RulesFor(PhysicalState.Liquid)
            .OfType<LimitRule>()
            .SelectMany(r => r.Rungs.Concat(r.WhereAddingMayFail?.Rungs ?? []))
            .SelectMany(r => r.Terms.SelectMany(t => t.Hazards).Append(r.Result))
            .Concat(RulesFor(PhysicalState.Liquid).OfType<LimitRule>().SelectMany(r => r.Elicitation?.Limits.Select(l => l.Key) ?? []))
            .Select(h => h.Index)
            .DefaultIfEmpty(0)
            .Max();
}
