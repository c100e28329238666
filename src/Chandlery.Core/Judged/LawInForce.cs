using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Judged;

/// <summary>
/// An edition of the law as it binds on one day, for a candle that is new or has been on the market for a while. Whoever
/// wants to know what the law makes of a composition asks <see cref="Judge"/>, and nothing else.
/// </summary>
public sealed class LawInForce
{
    private readonly SubstanceResolver resolver;
    private readonly PrecautionChoices precautions;

    internal LawInForce(
        Edition edition,
        DateOnly day,
        DateOnly? onMarketSince,
        SubstanceResolver resolver,
        PrecautionChoices precautions,
        PhysicalState state = PhysicalState.Solid
    )
    {
        this.resolver = resolver;
        this.precautions = precautions;
        State = state;
        Edition = edition;
        Day = day;
        OnMarketSince = onMarketSince;
        Rules = [.. edition.RulesFor(state).Where(r => r.InForce.On(day, onMarketSince))];
        Format = edition.Formats.On(day);
        NotComputed = edition.NotComputedFor(state);
    }

    /// <summary>The edition.</summary>
    public Edition Edition { get; }

    /// <summary>The day that decides which rules hold.</summary>
    public DateOnly Day { get; }

    /// <summary>Since when the candle has been sold; null for a new one.</summary>
    public DateOnly? OnMarketSince { get; }

    /// <summary>What the products are that it is asked about.</summary>
    public PhysicalState State { get; }

    /// <summary>Hazards that are not computed of them.</summary>
    public IReadOnlyList<NotComputed> NotComputed { get; }

    /// <summary>The classification rules that hold, in the edition's order.</summary>
    public IReadOnlyList<ClassRule> Rules { get; }

    /// <summary>How labels must look.</summary>
    public LabelFormat Format { get; }

    /// <summary>The same law on the same day for a candle that has been on the market since another day; null for a new one.</summary>
    public LawInForce ForStock(DateOnly? onMarketSince) =>
        onMarketSince == OnMarketSince ? this : new LawInForce(Edition, Day, onMarketSince, resolver, precautions, State);

    /// <summary>The same law on the same day for products of a state.</summary>
    public LawInForce ForState(PhysicalState state) =>
        state == State ? this : new LawInForce(Edition, Day, OnMarketSince, resolver.ForState(state), precautions, state);

    /// <summary>Where a sheet's line and the harmonised classes differ, and which counts.</summary>
    internal IReadOnlyList<string> DifferencesOf(Ingredient line, string product)
    {
        MassPercent whole = MassPercent.Whole;
        var part = new Contribution(product, "", whole, line.Share.Printed, whole, whole, line);
        return resolver.Resolve(new ComposedIngredient(line.Identity, whole, whole, whole, [part])).Differences;
    }

    /// <summary>What the law makes of a composition.</summary>
    public Verdict Judge(Composition composition)
    {
        IReadOnlyList<Substance> substances = resolver.Resolve(composition);
        var index = new MixtureIndex(substances, Edition.HighestCategory);
        Classification classification = Classifier.Classify(Rules, index, composition);
        LabelElements label = Edition.Label.ShowsHazards ? Label(classification, substances, composition) : LabelElements.None;
        return new Verdict(this, composition, substances, classification, label, index);
    }

    private LabelElements Label(Classification classification, IReadOnlyList<Substance> substances, Composition composition)
    {
        LabelElements ofClasses = LabelSelector.Select(Edition, classification, precautions);
        return ofClasses with
        {
            Supplemental =
            [
                .. ofClasses.Supplemental,
                .. IngredientStatements.Due(Edition, substances, Day),
                .. State == PhysicalState.Liquid ? VapourStatements.Due(Edition, classification, substances, composition.Liquid) : [],
            ],
        };
    }
}
