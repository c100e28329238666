using Chandlery.Core.Classified;
using Chandlery.Core.Classified.Methods;
using Chandlery.Core.Composed;
using Chandlery.Core.Hazards;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Judged;

/// <summary>What the law in force makes of a composition: the one answer that assessment, trace, ceilings, comparisons and papers share.</summary>
public sealed class Verdict
{
    private readonly MixtureIndex index;
    private readonly Lazy<IReadOnlyList<string>> unassessed;
    private readonly Lazy<IReadOnlyList<(string What, Citation Clause)>> whereAddingMayFail;

    internal Verdict(
        LawInForce law,
        Composition composition,
        IReadOnlyList<Substance> substances,
        Classification classification,
        LabelElements label,
        MixtureIndex index
    )
    {
        this.index = index;
        Law = law;
        Composition = composition;
        Substances = substances;
        Classification = classification;
        Label = label;
        unassessed = new(() => [.. OpenQuestions.Unassessed(law.NotComputed, substances, composition.UnknownHigh)]);
        whereAddingMayFail = new(() =>
            [.. OpenQuestions.NonAdditive(law.Rules, law.Edition.HighestCategory, substances, classification.Classes)]
        );
    }

    /// <summary>The law that was applied.</summary>
    public LawInForce Law { get; }

    /// <summary>What it was applied to.</summary>
    public Composition Composition { get; }

    /// <summary>The substances with the hazards that count.</summary>
    public IReadOnlyList<Substance> Substances { get; }

    /// <summary>Classes, and sensitisers to be named.</summary>
    public Classification Classification { get; }

    /// <summary>Label elements; none where the place's label shows no hazards.</summary>
    public LabelElements Label { get; }

    /// <summary>The result of a rule, or null when it gave none.</summary>
    public ClassResult? ResultOf(ClassRule rule) => Classification.Classes.FirstOrDefault(c => c.Rule == rule);

    /// <summary>
    /// How far each step of a rule is filled: 1 where it is just reached. The steps are those that decided; none where shares did not,
    /// as for <see cref="WhyNoShareDecides"/>.
    /// </summary>
    public IReadOnlyList<StepFilling> FillingOf(ClassRule rule)
    {
        if (WhyNoShareDecides(rule) is not null)
        {
            return [];
        }

        // The index keeps count of what it has shown, and questions may come from several threads.
        lock (index)
        {
            return rule switch
            {
                LimitRule limit =>
                [
                    .. limit.Rungs.Select(r => new StepFilling(
                        r.Result,
                        LimitMethod.Filling(r, limit.AddsSubstances, index),
                        r.Limit.ToString()
                    )),
                ],
                AcuteToxicityRule acute => Fillings(acute),
                _ => [],
            };
        }
    }

    /// <summary>What decided a rule for a liquid instead of the shares of its substances, in a sentence; null where shares did.</summary>
    public string? WhyNoShareDecides(ClassRule rule) =>
        rule switch
        {
            FlashRule flash => FlashMethod.Answer(flash, Composition.Liquid).Because,
            LimitRule { HighestViscosity: { } highest } limit when Classifier.IsTooThick(limit, Composition) =>
                $"The rule holds up to a viscosity of {highest}; the liquid's is {Composition.Liquid!.Viscosity}.",
            _ => null,
        };

    /// <summary>What could not be assessed.</summary>
    public IReadOnlyList<string> Unassessed => unassessed.Value;

    /// <summary>Why nobody can say whether a liquid is flammable; null where it is known, and for solids.</summary>
    public (string What, Citation Clause)? FlammabilityUnknown =>
        Law.Rules.OfType<FlashRule>().FirstOrDefault() is { } rule
        && FlashMethod.Answer(rule, Composition.Liquid) is { IsKnown: false } answer
            ? (answer.Because, answer.Clause)
            : null;

    /// <summary>A class that rests on a viscosity which nobody has measured; null for none.</summary>
    public ClassResult? RestsOnViscosity =>
        Composition.Liquid?.Viscosity is null
            ? Classification.Classes.FirstOrDefault(c => c.Rule is LimitRule { HighestViscosity: not null })
            : null;

    /// <summary>Where adding shares may fail, with the clause: for a competent person to decide.</summary>
    public IReadOnlyList<(string What, Citation Clause)> WhereAddingMayFail => whereAddingMayFail.Value;

    private List<StepFilling> Fillings(AcuteToxicityRule rule)
    {
        List<Dose> doses = AcuteToxicityMethod.Doses(rule, Substances);
        double whole = AcuteToxicityMethod.Whole(rule, Composition.UnknownHigh + Classifier.UnknownShare(Substances));
        return
        [
            .. rule.Bounds.Select(b => new StepFilling(
                b.Result,
                AcuteToxicityMethod.Filling(b, doses) / whole,
                $"ATE {Figures.Plain(b.UpTo[rule.Forms[0]])} {rule.Units[rule.Forms[0]]}"
            )),
        ];
    }
}
