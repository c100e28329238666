using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Classified;

/// <summary>The specific concentration limits of a substance within one hazard group, whether or not it has a hazard of that group.</summary>
/// <param name="Group">The group, as the vocabulary names it.</param>
/// <param name="Limits">The limits, one a category: the lowest that any source gives.</param>
/// <param name="MilderCount">Whether a limit above the general one may replace it: only when every source gives one.</param>
public sealed record OwnLimits(string Group, IReadOnlyList<SpecificLimit> Limits, bool MilderCount)
{
    /// <summary>
    /// The share from which the substance alone gives a mixture this result or a worse one of the same kind; null where no
    /// limit speaks of it. The order in which limits are declared plays no part.
    /// </summary>
    /// <param name="result">The category that the mixture would get.</param>
    /// <param name="general">The law's general limit for this substance, percent.</param>
    public double? For(HazardCategory result, double general)
    {
        double exact = double.PositiveInfinity;
        double withoutLetter = double.PositiveInfinity;
        double worseLetter = double.PositiveInfinity;
        double milderLetter = double.PositiveInfinity;
        for (int i = 0; i < Limits.Count; i++)
        {
            HazardCategory category = Limits[i].Category;
            double from = Limits[i].From.Value;
            if (category.Index == result.Index)
            {
                exact = Math.Min(exact, from);
            }
            else if (!IsSameKind(category, result))
            {
                continue;
            }
            else if (category.Category.Length == 1)
            {
                withoutLetter = Math.Min(withoutLetter, from);
            }
            else if (result.Category.Length == 1 || category.Severity < result.Severity)
            {
                worseLetter = Math.Min(worseLetter, from);
            }
            else
            {
                milderLetter = Math.Min(milderLetter, from);
            }
        }

        // A limit for "1" holds for 1A and 1B too: sheets are not careful about the letter. Who reaches 1A has reached 1B.
        double own = Math.Min(double.IsInfinity(exact) ? withoutLetter : exact, worseLetter);
        if (double.IsInfinity(own) && milderLetter < general)
        {
            own = milderLetter;
        }

        return double.IsInfinity(own) ? null
            : MilderCount ? own
            : Math.Min(own, general);
    }

    /// <summary>The lowest of the limits.</summary>
    public MassPercent Lowest => Limits.Min(l => l.From);

    // "1", "1A" and "1B" of one class and effect; "2" is another kind of result.
    private static bool IsSameKind(HazardCategory a, HazardCategory b) =>
        a.ClassCode == b.ClassCode
        && a.Variant == b.Variant
        && a.Category.Length > 0
        && b.Category.Length > 0
        && a.Category[0] == b.Category[0];
}
