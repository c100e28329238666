namespace Chandlery.Tests.SecondCalculation;

/// <summary>Which sensitisers the label names to protect those who are already sensitised: Annex II 2.8, Table 3.4.6.</summary>
internal static class Elicitation
{
    /// <summary>Names of the sensitisers at or over their limit for elicitation.</summary>
    public static IReadOnlyList<string> Named(GivenMixture mixture) =>
        [
            .. mixture
                .Substances.Where(s => new[] { "Skin Sens.", "Resp. Sens." }.Any(c => Limit(s, c) is { } l && Shares.Reaches(s.Percent, l)))
                .Select(s => s.Name),
        ];

    /// <summary>One tenth of the specific limit whatever its size, else 0.01 % for sub-category 1A and 0.1 % for 1 and 1B.</summary>
    private static double? Limit(GivenSubstance substance, string hazardClass)
    {
        double? own = substance.OwnLimits.Where(l => l.Result.Class == hazardClass).Min(l => (double?)l.FromPercent);
        if (own is not null)
        {
            return own / 10;
        }

        return substance.Hazards.Where(h => h.Class == hazardClass).Min(h => (double?)(h.Category == "1A" ? 0.01 : 0.1));
    }
}
