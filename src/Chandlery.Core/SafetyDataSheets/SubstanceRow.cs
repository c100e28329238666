using Chandlery.Core.Classified;
using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>A substance as a row of section 3.</summary>
internal static class SubstanceRow
{
    /// <summary>Name, CAS number, EC number, share, classes, and limits with M-factors and estimates.</summary>
    public static string[] Cells(Substance s) =>
        [
            s.Name,
            s.Ingredient.Identity.Cas?.Text ?? "-",
            s.Ingredient.Identity.Ec?.Text ?? "-",
            Share(s),
            s.IsKnown
                ? (
                    s.Hazards.Count == 0
                        ? "not classified"
                        : string.Join(
                            "; ",
                            s.Hazards.Select(h => $"{$"{h.Category.ClassCode} {h.Category.Category}".Trim()}, {h.StatementWithOrgans}")
                        )
                )
                : "unknown",
            string.Join(
                "; ",
                s.OwnLimits.SelectMany(o => o.Limits)
                    .Select(l =>
                        $"{l.Category.ClassCode} {l.Category.Category}, {l.Category.Statement}: C >= {Figures.Plain(l.From.Value)} %"
                    )
                    .Concat(s.Hazards.Where(h => h.Category.MultipliedBy != MFactorKind.None).Select(M))
                    .Concat(s.Toxicity.Select(Estimate))
            ),
        ];

    /// <summary>An estimate with its route and unit.</summary>
    public static string Estimate(ToxicityEstimate t) =>
        t.Route switch
        {
            ExposureRoute.Oral => $"ATE (oral) = {Figures.Plain(t.Value)} mg/kg",
            ExposureRoute.Dermal => $"ATE (dermal) = {Figures.Plain(t.Value)} mg/kg",
            ExposureRoute.InhalationVapour => $"ATE (inhalation, vapours) = {Figures.Plain(t.Value)} mg/l",
            ExposureRoute.InhalationDust => $"ATE (inhalation, dust/mist) = {Figures.Plain(t.Value)} mg/l",
            _ => $"ATE (inhalation, gas) = {Figures.Plain(t.Value)} ppm",
        };

    private static string M(SubstanceHazard h)
    {
        string which = h.Category.MultipliedBy == MFactorKind.Acute ? "acute" : "chronic";
        return h.MIsKnown ? $"M ({which}) = {Figures.Plain(h.M)}" : $"M ({which}) = {Figures.Plain(h.M)} (assumed)";
    }

    // The whole share of a natural oil, although its constituents are classified one by one.
    private static string Share(Substance s)
    {
        double low = s.Ingredient.Low.Value;
        double high = s.Ingredient.WholeHigh.Value;
        return high - low < 1e-9 * high ? Figures.PlainUp(high)
            : low == 0 || s.Ingredient.IsRemainder ? $"<= {Figures.PlainUp(high)}"
            : $"{Figures.Plain(low)} - {Figures.PlainUp(high)}";
    }
}
