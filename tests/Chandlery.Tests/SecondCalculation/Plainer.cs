namespace Chandlery.Tests.SecondCalculation;

/// <summary>Takes away from a mixture what a difference does not need, so that a person sees the cause at once.</summary>
internal static class Plainer
{
    /// <summary>The same difference on as little as possible.</summary>
    /// <param name="found">Where the difference was seen.</param>
    /// <param name="difference">One of its differences.</param>
    /// <param name="edition">The law under which it was seen.</param>
    public static Disagreement Make(Disagreement found, string difference, SecondEdition edition)
    {
        Disagreement plainest = found;
        while (
            Less(plainest.Mixture)
                .Select(m => MixtureComparison.Of(m, edition))
                .FirstOrDefault(d => d?.Differences.Contains(difference) == true)
                is { } plainer
        )
        {
            plainest = plainer;
        }

        return plainest;
    }

    private static IEnumerable<GivenMixture> Less(GivenMixture mixture)
    {
        if (mixture.UndeclaredPercent > 0)
        {
            yield return mixture with
            {
                UndeclaredPercent = 0,
            };
        }

        foreach (GivenLiquid less in Less(mixture.Liquid))
        {
            yield return mixture with
            {
                Liquid = less,
            };
        }

        for (int i = 0; i < mixture.Substances.Count; i++)
        {
            yield return mixture with
            {
                Substances = Without(mixture.Substances, i),
            };
        }

        for (int i = 0; i < mixture.Substances.Count; i++)
        {
            int place = i;
            foreach (GivenSubstance less in Less(mixture.Substances[i]))
            {
                yield return mixture with
                {
                    Substances = [.. mixture.Substances.Select((s, at) => at == place ? less : s)],
                };
            }
        }
    }

    // It stays a liquid: what is taken away is what is known of it.
    private static IEnumerable<GivenLiquid> Less(GivenLiquid? liquid) =>
        liquid is null
            ? []
            : new[]
            {
                liquid with
                {
                    Class = null,
                },
                liquid with
                {
                    Flash = null,
                },
                liquid with
                {
                    Boiling = null,
                },
                liquid with
                {
                    SustainsCombustion = null,
                },
                liquid with
                {
                    Viscosity = null,
                },
                liquid with
                {
                    FormsVapour = null,
                },
            }.Where(l => l != liquid);

    // Made anew each time: a copy would keep what was read from the old classes and limits.
    private static IEnumerable<GivenSubstance> Less(GivenSubstance s)
    {
        // A class stays while limits or M-factors hang on it: without it they would mean something else.
        bool bare = s.Limits.Count == 0 && s.AcuteM is null && s.ChronicM is null;
        for (int i = 0; bare && i < s.Classes?.Count; i++)
        {
            yield return new GivenSubstance(s.Name, s.Percent, Without(s.Classes, i), s.Limits, s.AcuteM, s.ChronicM, s.Estimates);
        }

        for (int i = 0; i < s.Limits.Count; i++)
        {
            yield return new GivenSubstance(s.Name, s.Percent, s.Classes, Without(s.Limits, i), s.AcuteM, s.ChronicM, s.Estimates);
        }

        for (int i = 0; i < s.Estimates.Count; i++)
        {
            yield return new GivenSubstance(s.Name, s.Percent, s.Classes, s.Limits, s.AcuteM, s.ChronicM, Without(s.Estimates, i));
        }

        if (s.AcuteM is not null || s.ChronicM is not null)
        {
            yield return new GivenSubstance(s.Name, s.Percent, s.Classes, s.Limits, null, null, s.Estimates);
        }
    }

    private static List<T> Without<T>(IReadOnlyList<T> items, int place) => [.. items.Where((_, i) => i != place)];
}
