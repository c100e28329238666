using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Limits;

namespace Chandlery.Core.Assessed;

/// <summary>Everything that follows from a candle's declarations in one edition on one day.</summary>
/// <param name="Candle">The candle.</param>
/// <param name="Batch">The batch, when what was weighed was assessed.</param>
/// <param name="Maker">Who answers for it.</param>
/// <param name="Vessel">What it is poured into.</param>
/// <param name="Edition">The law.</param>
/// <param name="AsOf">The day that decides which rules hold.</param>
/// <param name="Places">Places of sale under this edition.</param>
/// <param name="Languages">Languages of the label, in order.</param>
/// <param name="Composition">What is in it.</param>
/// <param name="Substances">Its substances with the hazards that count.</param>
/// <param name="Classification">Its classes.</param>
/// <param name="Label">Its label elements.</param>
/// <param name="Limits">Limits with their margins.</param>
/// <param name="Unassessed">What could not be assessed.</param>
/// <param name="Findings">What the maker must know.</param>
/// <param name="SmallPackageRelief">Statements that may be left off because the package is small.</param>
/// <param name="Ufi">The UFI; null when none is needed or none can be made yet.</param>
/// <param name="NextChanges">The next changes of the law that would alter the label; found when somebody asks.</param>
public sealed record Assessment(
    Candle Candle,
    Batch? Batch,
    Maker Maker,
    Vessel Vessel,
    Edition Edition,
    DateOnly AsOf,
    IReadOnlyList<Place> Places,
    IReadOnlyList<Language> Languages,
    Composition Composition,
    IReadOnlyList<Substance> Substances,
    Classification Classification,
    LabelElements Label,
    IReadOnlyList<LimitCheck> Limits,
    IReadOnlyList<string> Unassessed,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<LabelChoice> SmallPackageRelief,
    string? Ufi,
    Lazy<(LegalChange? Law, LegalChange? Expected)> NextChanges
)
{
    /// <summary>The next change of the law that would alter the label.</summary>
    public LegalChange? NextLaw => NextChanges.Value.Law;

    /// <summary>The next change that is agreed but not yet law.</summary>
    public LegalChange? NextExpected => NextChanges.Value.Expected;

    /// <summary>Name of the declaration that was assessed: the batch's where there is one.</summary>
    public string Id => Batch?.Id ?? Candle.Id;

    /// <summary>The batch code to print, or null.</summary>
    public string? BatchCode => Batch?.Code ?? Candle.BatchCode;

    /// <summary>True when something stops the sale.</summary>
    public bool StopsSale => Findings.Any(f => f.Gravity == Gravity.Stop);
}
