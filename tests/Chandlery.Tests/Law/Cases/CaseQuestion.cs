using Chandlery.Core.Quantities;

namespace Chandlery.Tests.Law.Cases;

/// <summary>Something that a case may say of the answer.</summary>
/// <param name="Field">Its field under <c>then</c>.</param>
/// <param name="Values">What its values are, for whoever mistypes one.</param>
/// <param name="Answer">What the program answers.</param>
internal sealed record CaseQuestion(string Field, CaseValueKind Values, Func<CaseAnswer, IEnumerable<string>> Answer)
{
    /// <summary>The questions whose answers are lists.</summary>
    public static IReadOnlyList<CaseQuestion> Lists { get; } =
    [
        new("classes", CaseValueKind.Class, a => a.Verdict.Classification.Classes.Select(c => c.Category.Code)),
        new("statements", CaseValueKind.Statement, a => a.Verdict.Label.Hazard.Select(s => s.Text)),
        new("supplemental", CaseValueKind.Statement, a => a.Verdict.Label.Supplemental.Select(s => s.Text)),
        new("precautions", CaseValueKind.Statement, a => a.Verdict.Label.Precautionary.Select(s => s.Text)),
        new("pictograms", CaseValueKind.Pictogram, a => a.Verdict.Label.Pictograms.Select(p => p.Text)),
        new("leftOff", CaseValueKind.StatementOrPictogram, a => a.Verdict.Label.LeftOff.Select(l => l.Text)),
        new("names", CaseValueKind.Ingredient, a => a.Verdict.Label.Named.Select(n => n.Name)),
        new("sensitisers", CaseValueKind.Ingredient, a => a.Verdict.Classification.Sensitisers.Select(s => s.Substance.Name)),
        new(
            "statementsOfIngredients",
            CaseValueKind.Text,
            a => a.Verdict.Substances.SelectMany(s => s.Hazards).Select(h => h.StatementWithOrgans)
        ),
        new("openPoints", CaseValueKind.Text, a => a.Verdict.Unassessed.Concat(a.Verdict.WhereAddingMayFail.Select(q => q.What))),
    ];

    /// <summary>The signal word, or nothing.</summary>
    public static CaseQuestion SignalWord { get; } =
        new("signalWord", CaseValueKind.Word, a => a.Verdict.Label.SignalWord is { } word ? [word.Text] : []);

    /// <summary>The share of unknown acute toxicity that the label states, or nothing.</summary>
    public static CaseQuestion UnknownToxicity { get; } =
        new(
            "unknownToxicityPercent",
            CaseValueKind.Word,
            a => a.Verdict.Classification.UnknownToxicity is { } unknown ? [Percent(unknown.Share.Value)] : []
        );

    /// <summary>The share of unknown hazard to waters that the label states, or nothing.</summary>
    public static CaseQuestion UnknownAquatic { get; } =
        new(
            "unknownAquaticPercent",
            CaseValueKind.Word,
            a => a.Verdict.Classification.UnknownAquatic is { } unknown ? [Percent(unknown.Share.Value)] : []
        );

    /// <summary>The precautions beyond a number of them.</summary>
    public static CaseQuestion PrecautionsBeyond(int number) =>
        new("precautionsAtMost", CaseValueKind.Word, a => a.Verdict.Label.Precautionary.Skip(number).Select(p => p.Text));

    /// <summary>What may go from the label of a package of this content.</summary>
    public static CaseQuestion MayLeaveOff(double millilitres) =>
        new("mayLeaveOff", CaseValueKind.Statement, a => a.MayLeaveOff(millilitres));

    /// <summary>A share as expectations write it.</summary>
    public static string Percent(double value) => Figures.Plain(value);
}
