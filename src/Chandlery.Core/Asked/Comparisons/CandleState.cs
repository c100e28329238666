using Chandlery.Core.Assessed;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Notified;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Asked.Comparisons;

/// <summary>What can change on a candle, in one edition of the law.</summary>
/// <param name="Id">The candle's or batch's name.</param>
/// <param name="Edition">The edition.</param>
/// <param name="Subjects">Facts by subject, such as "class" or "hazard statement".</param>
public sealed record CandleState(string Id, string Edition, IReadOnlyDictionary<string, IReadOnlyList<Fact>> Subjects)
{
    /// <summary>What the poison centres are told of, where the candle has a UFI; empty otherwise.</summary>
    public IReadOnlyList<NotifiedShare> Notified { get; init; } = [];

    /// <summary>The last days for labels of the state before, by whether a hazard is new or graver; null where no term is known.</summary>
    public (DateOnly Graver, DateOnly Other, string Clause)? OldLabelsUntil { get; init; }

    /// <summary>What was measured of it; null for solids, and where nothing was.</summary>
    public MeasuredState? Measured { get; init; }

    /// <summary>The day of the law that it was assessed by.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>The next change of the law that alters its classes or statements; found when somebody asks.</summary>
    public required Lazy<LegalChange?> NextOfElements { get; init; }

    /// <summary>What is held of labels of the class before where an act changes the class; empty where nothing is known.</summary>
    public string OfOldClasses { get; init; } = "";

    /// <summary>The law on such notifications; null where the edition knows none.</summary>
    public PoisonCentreRules? PoisonCentres { get; init; }

    /// <summary>The state of an assessed candle.</summary>
    public static CandleState Of(Assessment a)
    {
        LabelElements label = a.Label;
        LabelFormat format = a.Verdict.Law.Format;
        SizeBand band = format.BandFor(a.Vessel.Brimful);
        IReadOnlyList<Fact> Choices(IEnumerable<LabelChoice> choices) =>
            [.. choices.Select(c => new Fact(c.Text, Reason(c.Because, c.Clause)))];
        return new CandleState(
            a.Id,
            a.Edition.Id,
            new Dictionary<string, IReadOnlyList<Fact>>
            {
                ["class"] =
                [
                    .. a.Classification.Classes.Select(c => new Fact(
                        $"{c.Category.Code}, {c.Statement}",
                        Reason(c.Working.Sentence, c.Working.Clause)
                    )),
                ],
                ["pictogram"] = Choices(label.Pictograms),
                ["signal word"] = Choices(label.SignalWord is { } word ? [word] : []),
                ["hazard statement"] = Choices(label.Hazard),
                ["supplemental statement"] = Choices(label.Supplemental),
                ["precautionary statement"] = Choices(label.Precautionary),
                ["named substance"] = [.. label.Named.Select(n => new Fact(n.Name, Reason(n.Because, n.Clause)))],
                ["broken limit"] =
                [
                    .. a
                        .Limits.Where(l => l.Holds == false)
                        .Select(l => new Fact(
                            l.Name,
                            $"{Figures.Plain(l.Value!.Value)} {l.Unit}, at most {Figures.Plain(l.Limit!.Value)} ({l.Source})"
                        )),
                ],
                ["stop"] = [.. a.Findings.Where(f => f.Gravity == Gravity.Stop).Select(f => new Fact(f.What, f.Clause))],
                ["least label"] =
                [
                    new Fact($"{band.Label}, lower-case x {band.XHeight}", Reason($"for a package of {a.Vessel.Brimful}", format.Clause)),
                ],
            }
        )
        {
            Notified = a.Ufi is null ? [] : [.. a.Substances.Select(s => new NotifiedShare(s.Name, s.Ingredient.High))],
            PoisonCentres = a.Edition.PoisonCentres,
            Measured = a.Composition.Liquid is { } liquid
                ? new MeasuredState(liquid, a.Composition, a.Edition.Liquids?.Flash.Clause.Text ?? "")
                : null,
            Day = a.AsOf,
            NextOfElements = a.NextOfElements,
            OfOldClasses = a.Edition.Relabelling?.Stricter ?? "",

            // Old labels are of no use where the candle itself may not be sold.
            OldLabelsUntil =
                !a.StopsSale && a.Edition.Relabelling is { } rules && rules.InForce.On(a.AsOf)
                    ? (rules.OldLabelsUntil(a.AsOf, true), rules.OldLabelsUntil(a.AsOf, false), rules.Clause.Text)
                    : null,
        };
    }

    private static string Reason(string because, string clause) => clause.Length == 0 ? because : $"{because} ({clause})";
}
