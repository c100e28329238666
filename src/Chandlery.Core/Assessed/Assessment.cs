using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Limits;
using Chandlery.Core.Notified;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Assessed;

/// <summary>Everything that follows from a candle's declarations in one edition on one day.</summary>
public sealed record Assessment
{
    /// <summary>The candle.</summary>
    public required Candle Candle { get; init; }

    /// <summary>What kind of product it is.</summary>
    public required ProductKind Kind { get; init; }

    /// <summary>The batch, when what was weighed was assessed.</summary>
    public required Batch? Batch { get; init; }

    /// <summary>Who answers for it, as labels and papers name it.</summary>
    public required Maker Maker { get; init; }

    /// <summary>Who stands behind it at these places.</summary>
    public required MarketRoles Roles { get; init; }

    /// <summary>What it is filled into; what stands by itself is its own.</summary>
    public required Vessel Vessel { get; init; }

    /// <summary>Places of sale under this edition.</summary>
    public required IReadOnlyList<Place> Places { get; init; }

    /// <summary>Languages of the label, in order.</summary>
    public required IReadOnlyList<Language> Languages { get; init; }

    /// <summary>What the law makes of it.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>Limits with their margins.</summary>
    public required IReadOnlyList<LimitCheck> Limits { get; init; }

    /// <summary>How much is in the vessel.</summary>
    public required Millilitres Contents { get; init; }

    /// <summary>Where it is looked for what the maker must know.</summary>
    public required FindingSources FindingSources { get; init; }

    /// <summary>The UFI; null when none is needed or none can be made yet.</summary>
    public required string? Ufi { get; init; }

    /// <summary>How the e-mark stands; null for a candle that does not use it.</summary>
    public EMarkState? EMark { get; init; }

    /// <summary>The next changes of the law that would alter the label; found when somebody asks.</summary>
    public required Lazy<(LegalChange? Law, LegalChange? Expected)> NextChanges { get; init; }

    /// <summary>The next change of the law that would alter classes or statements; found when somebody asks.</summary>
    public required Lazy<LegalChange?> NextOfElements { get; init; }

    /// <summary>What its notification to the poison centres shares with other candles; found when somebody asks.</summary>
    public required Lazy<SharedNotification> Notification { get; init; }

    /// <summary>As what it is checked against limits.</summary>
    public LimitedAs LimitedAs => KindCheck.LimitedAs(Candle, Kind);

    /// <summary>The law.</summary>
    public Edition Edition => Verdict.Law.Edition;

    /// <summary>The day that decides which rules hold.</summary>
    public DateOnly AsOf => Verdict.Law.Day;

    /// <summary>What is in it.</summary>
    public Composition Composition => Verdict.Composition;

    /// <summary>Its substances with the hazards that count.</summary>
    public IReadOnlyList<Substance> Substances => Verdict.Substances;

    /// <summary>Its classes.</summary>
    public Classification Classification => Verdict.Classification;

    /// <summary>Its label elements.</summary>
    public LabelElements Label => Verdict.Label;

    /// <summary>The next change of the law that would alter the label.</summary>
    public LegalChange? NextLaw => NextChanges.Value.Law;

    /// <summary>The next change that is agreed but not yet law.</summary>
    public LegalChange? NextExpected => NextChanges.Value.Expected;

    /// <summary>Name of the declaration that was assessed: the batch's where there is one.</summary>
    public string Id => Batch?.Id ?? Candle.Id;

    /// <summary>The batch code to print, or null.</summary>
    public string? BatchCode => Batch?.Code ?? Candle.BatchCode;

    /// <summary>Why a paper is not made under this edition; null where it is.</summary>
    /// <param name="paper">Its short name.</param>
    public Refusal? RefusalOf(string paper) =>
        Edition.Refuses.FirstOrDefault(r => r.Papers.Contains(paper) && r.Holds(Classification.Classes.Select(c => c.Category)));

    /// <summary>What could not be assessed.</summary>
    public IReadOnlyList<string> Unassessed => [.. Verdict.Unassessed, .. Assessor.NotDeclared(Composition.Recipe)];

    /// <summary>What the maker must know.</summary>
    public IReadOnlyList<Finding> Findings => FindingSources.All;

    /// <summary>Statements that may be left off because the package is small.</summary>
    public IReadOnlyList<StatementChoice> SmallPackageRelief => SmallPackages.MayLeaveOff(Edition, Classification, Label, Contents);

    /// <summary>True when something stops the sale.</summary>
    public bool StopsSale => FindingSources.StopSale;
}
