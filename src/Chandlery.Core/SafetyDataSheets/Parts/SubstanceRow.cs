using Chandlery.Core.Classified;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>A substance as a row of section 3.</summary>
/// <param name="texts">Words.</param>
/// <param name="figures">How figures are written.</param>
internal sealed class SubstanceRow(SheetTexts texts, FigureFormat figures)
{
    /// <summary>Name, CAS number, EC number, share, classes, and limits with M-factors and estimates.</summary>
    public string[] Cells(Substance s) =>
        [
            s.Name,
            s.Ingredient.Identity.Cas?.Text ?? "-",
            s.Ingredient.Identity.Ec?.Text ?? "-",
            Share(s),
            Classes(s),
            string.Join(
                "; ",
                s.OwnLimits.SelectMany(o => o.Limits)
                    .Select(Limit)
                    .Concat(s.Hazards.Where(h => h.Category.MultipliedBy != MFactorKind.None).Select(M))
                    .Concat(s.Toxicity.Select(Estimate))
            ),
        ];

    /// <summary>An estimate with its route and unit.</summary>
    public string Estimate(ToxicityEstimate t) =>
        texts.Phrase(
            t.Route switch
            {
                ExposureRoute.Oral => SheetPhrase.AteOral,
                ExposureRoute.Dermal => SheetPhrase.AteDermal,
                ExposureRoute.InhalationVapour => SheetPhrase.AteVapour,
                ExposureRoute.InhalationDust => SheetPhrase.AteDust,
                _ => SheetPhrase.AteGas,
            },
            ("estimate", figures.Declared(t.Value))
        );

    private string Classes(Substance s) =>
        !s.IsKnown ? texts.Phrase(SheetPhrase.Unknown)
        : s.Hazards.Count == 0 ? texts.Phrase(SheetPhrase.NoClass)
        : string.Join("; ", s.Hazards.Select(h => $"{SheetContext.Short(h.Category)}, {h.StatementWithOrgans}"));

    private string Limit(SpecificLimit l) =>
        texts.Phrase(
            SheetPhrase.OwnLimit,
            ("class", $"{l.Category.ClassCode} {l.Category.Category}, {l.Category.Statement}"),
            ("percent", figures.Declared(l.From.Value))
        );

    private string M(SubstanceHazard h)
    {
        SheetPhrase which = h.Category.MultipliedBy == MFactorKind.Acute ? SheetPhrase.AcuteM : SheetPhrase.ChronicM;
        return texts.Phrase(which, ("factor", figures.Declared(h.M))) + (h.MIsKnown ? "" : texts.Phrase(SheetPhrase.MAssumed));
    }

    // The whole share of a natural oil, although its constituents are classified one by one.
    private string Share(Substance s)
    {
        MassPercent low = s.Ingredient.Low;
        MassPercent high = s.Ingredient.WholeHigh;
        string most = figures.AtMostFigure(high);
        return high.Value - low.Value < MassPercent.RelativeTolerance * high.Value ? most
            : low.Value == 0 || s.Ingredient.IsRemainder ? texts.Phrase(SheetPhrase.ShareUpTo, ("high", most))
            : texts.Phrase(SheetPhrase.ShareRange, ("low", figures.AtLeastFigure(low)), ("high", most));
    }
}
