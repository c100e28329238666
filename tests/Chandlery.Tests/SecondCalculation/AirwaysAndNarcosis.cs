namespace Chandlery.Tests.SecondCalculation;

/// <summary>STOT SE 3: irritation of the airways and narcotic effects, each added up by itself (3.8.3.4.5 and 3.8.3.4.6).</summary>
/// <remarks>
/// 20 % is a guide value for an expert's decision; here it is a limit, which is the stricter reading. A limit of the
/// substance's own takes its place as share over limit.
/// </remarks>
internal static class AirwaysAndNarcosis
{
    private const double GuidePercent = 20;

    // Table 1.1.
    private const double CutOffPercent = 1;

    /// <summary>The classes of the mixture.</summary>
    public static IEnumerable<FoundClass> Of(GivenMixture mixture)
    {
        foreach ((string statement, string effect) in new[] { ("H335", "respiratory irritation"), ("H336", "narcotic effects") })
        {
            List<Cause> causes = [.. mixture.Substances.Select(s => Weight(s, statement)).OfType<Cause>()];
            if (Shares.Reaches(causes.Sum(c => c.Weight), 1))
            {
                yield return new FoundClass($"STOT SE 3 ({effect})", causes);
            }
        }
    }

    private static Cause? Weight(GivenSubstance substance, string statement)
    {
        double? own = substance.OwnLimits.Where(l => Means(l.Result, statement)).Min(l => (double?)l.FromPercent);
        if (own is null && !substance.Hazards.Any(h => Means(h, statement)))
        {
            return null;
        }

        double limit = own ?? GuidePercent;
        return Shares.Reaches(substance.Percent, Math.Min(limit, CutOffPercent))
            ? new Cause(substance.Name, substance.Percent / limit)
            : null;
    }

    private static bool Means(HazardText hazard, string statement) => hazard.Code == "STOT SE 3" && hazard.Statement == statement;
}
