using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Asked.Trials;

/// <summary>All that a blend shall keep to.</summary>
/// <param name="Aims">What is asked of law and limits.</param>
/// <param name="Cost">What the oil may cost; null for anything.</param>
public sealed record TrialAims(IReadOnlyList<TrialAim> Aims, CostBound? Cost)
{
    private const double GramsInKilogram = 1000;

    /// <summary>What a verdict does not keep to, in words; nothing where it keeps to all.</summary>
    public IEnumerable<string> MissedBy(TrialVerdict v)
    {
        foreach (string stop in v.Stops.Select(s => s.What))
        {
            yield return stop;
        }

        if (Aims.Contains(TrialAim.NoClass) && v.Verdict.Classification.Classes.Count > 0)
        {
            yield return "It has a class: " + string.Join(", ", v.Verdict.Classification.Classes.Select(c => c.Category.Code)) + ".";
        }

        if (Aims.Contains(TrialAim.NoSensitiser) && NamesSensitisers(v.Verdict))
        {
            IEnumerable<string> names = v.Verdict.Classification.Sensitisers.Select(s => s.Substance.Name);
            yield return "The label names sensitisers: " + string.Join(", ", names) + ".";
        }

        if (Aims.Contains(TrialAim.Ifra))
        {
            string? category = v.Question.Kind!.IfraCategory;
            foreach (OilShare oil in v.Recipe.Oils.Where(o => !HasCertificate(o.Oil, category)))
            {
                yield return $"No IFRA certificate for category {category} is declared for {oil.Oil.Name}, so nobody can say that it is kept.";
            }
        }

        if (Cost is { } cost)
        {
            foreach (OilShare oil in v.Recipe.Oils.Where(o => !cost.PerGramByOil.ContainsKey(o.Oil.Id)))
            {
                yield return $"No lot says what {oil.Oil.Name} costs.";
            }

            double perKilogram = CostPerKilogram(v.Recipe);
            if (perKilogram > cost.MostPerKilogram * (1 + MassPercent.RelativeTolerance))
            {
                yield return $"Its oil costs {Figures.Plain(perKilogram)} a kilogram of candle.";
            }
        }
    }

    /// <summary>What the oil of a kilogram of candle costs, as far as prices are known.</summary>
    internal double CostPerKilogram(Recipe recipe) =>
        recipe.Oils.Sum(o => GramsInKilogram * o.Share.Value / 100 * (Cost?.PerGramByOil.GetValueOrDefault(o.Oil.Id) ?? 0));

    private static bool HasCertificate(Oil oil, string? category) => category is not null && oil.Ifra?.Limits.ContainsKey(category) == true;

    private static bool NamesSensitisers(Verdict verdict) =>
        verdict.Classification.Sensitisers.Count > 0
        || verdict.Classification.Classes.Any(c => c.Rule is LimitRule { Elicitation: not null });
}
