using Chandlery.Core.Classified;
using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Notified;

/// <summary>Ingredients with the widths of range that CLP Annex VIII, Part B, 3.4 allows (Tables 1 and 2; from memory).</summary>
public static class PoisonFacts
{
    /// <summary>Where the ranges stand.</summary>
    public const string Clause = "CLP Annex VIII, Part B, 3.4.1 and 3.4.2, Tables 1 and 2 (from memory)";

    // From each share on, the widest range that may be given.
    private static readonly (double From, double Width)[] MajorConcern = [(25, 5), (10, 3), (1, 1), (0.1, 0.3), (0, 0.1)];
    private static readonly (double From, double Width)[] Other = [(25, 20), (10, 10), (1, 3), (0, 1)];

    /// <summary>The ingredients that a notification names, largest first: hazardous ones, and others from 1 % on.</summary>
    public static IEnumerable<PoisonFact> Ingredients(IReadOnlyList<Substance> substances)
    {
        foreach (Substance s in substances)
        {
            double high = s.Ingredient.High.Value;
            // Of what nobody knows, the stricter side is taken: it may be hazardous, and of major concern.
            bool hazardous = !s.IsKnown || s.Hazards.Any(h => h.Category.Area != HazardArea.Environment);
            if (high < (hazardous ? 0.1 : 1))
            {
                continue;
            }

            bool major = !s.IsKnown || s.Hazards.Any(h => IsOfMajorConcern(h.Category));
            yield return new PoisonFact(
                s.Name,
                s.Ingredient.Identity.Cas?.Text,
                s.Ingredient.Identity.Ec?.Text,
                Band(s.Ingredient.Low.Value, high, major ? MajorConcern : Other),
                s.IsKnown ? string.Join(", ", s.Hazards.Select(h => h.Category.Code)) : "unknown"
            );
        }
    }

    // Acute toxicity 1 to 3, STOT 1 and 2, Skin Corr., Eye Dam., CMR, respiratory sensitisation.
    private static bool IsOfMajorConcern(HazardCategory h) =>
        h.ClassCode switch
        {
            "Acute Tox." => h.Category is "1" or "2" or "3",
            "STOT SE" or "STOT RE" => h.Category is "1" or "2",
            "Skin Corr." or "Eye Dam." or "Muta." or "Carc." or "Repr." or "Resp. Sens." => true,
            _ => false,
        };

    /// <summary>A range no wider than allowed that holds the high end; the exact share when the sheet gives one.</summary>
    private static string Band(double low, double high, (double From, double Width)[] widths)
    {
        if (high - low < 1e-9)
        {
            return Figures.Plain(high) + " %";
        }

        double width = widths.First(w => high > w.From || w.From == 0).Width;
        double from = Math.Max(low, high - width);
        string note = high - low > width + 1e-9 ? " (the sheet's range is wider: ask the supplier)" : "";
        return $"{Figures.Plain(from)} - {Figures.Plain(high)} %{note}";
    }
}
