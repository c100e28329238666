using System.Globalization;
using Chandlery.Core.Classified;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Notified;

/// <summary>The ingredients that a notification to the poison centres names, with the widths of range that the law allows.</summary>
public static class PoisonFacts
{
    /// <summary>The ingredients, largest first: hazardous ones, those of unknown hazard, and others from a larger share on.</summary>
    /// <param name="rules">What the law asks for.</param>
    /// <param name="substances">What is in the candle.</param>
    public static IEnumerable<PoisonFact> Ingredients(PoisonCentreRules rules, IReadOnlyList<Substance> substances)
    {
        foreach (Substance s in substances)
        {
            // Of what nobody knows, the stricter side is taken: it may be hazardous, and of major concern.
            bool hazardous = !s.IsKnown || s.Hazards.Any(h => rules.Areas.Contains(h.Category.Area));
            if (!s.Ingredient.High.Reaches(hazardous ? rules.HazardousFrom : rules.OthersFrom))
            {
                continue;
            }

            bool major = !s.IsKnown || s.Hazards.Any(h => rules.MajorConcern.Contains(h.Category));
            yield return new PoisonFact(
                s.Name,
                s.Ingredient.Identity.Cas?.Text,
                s.Ingredient.Identity.Ec?.Text,
                Band(s.Ingredient.Low, s.Ingredient.High, major ? rules.MajorConcernWidths : rules.OtherWidths),
                s.IsKnown ? string.Join(", ", s.Hazards.Select(h => h.Category.Code)) : "unknown"
            );
        }
    }

    // A range no wider than allowed that holds the high end; the exact share when the sheet gives one. It is rounded outwards first.
    private static string Band(MassPercent low, MassPercent high, IReadOnlyList<RangeWidth> widths)
    {
        FigureFormat figures = FigureFormat.English;
        string top = figures.AtMostFigure(high);
        if (high.Value - low.Value < MassPercent.RelativeTolerance)
        {
            return top + " %";
        }

        // A band begins at its edge: a range that ends there is one of the band above.
        double width = widths.First(w => high.Reaches(w.From)).Points;
        double narrowest = double.Parse(top, CultureInfo.InvariantCulture) - width;
        bool isTooWide = high.Value - low.Value > width + MassPercent.RelativeTolerance;
        string from = low.Value < narrowest ? figures.AtMostFigure(new MassPercent(narrowest)) : figures.AtLeastFigure(low);
        string note = isTooWide ? " (the sheet's range is wider: ask the supplier)" : "";
        return $"{from} - {top} %{note}";
    }
}
