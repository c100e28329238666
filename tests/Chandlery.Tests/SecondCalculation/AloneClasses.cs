namespace Chandlery.Tests.SecondCalculation;

/// <summary>The classes for which one ingredient alone decides.</summary>
internal static class AloneClasses
{
    /// <summary>The Union's general limits, for what is not a gas.</summary>
    private static readonly AloneRule[] Rules =
    [
        // Table 3.4.5.
        new("Resp. Sens.", "1A", "1A", 0.1),
        new("Resp. Sens.", "1", "1", 1),
        new("Resp. Sens.", "1B", "1B", 1),
        new("Skin Sens.", "1A", "1A", 0.1),
        new("Skin Sens.", "1", "1", 1),
        new("Skin Sens.", "1B", "1B", 1),
        // Table 3.5.2.
        new("Muta.", "1A", "1A", 0.1),
        new("Muta.", "1B", "1B", 0.1),
        new("Muta.", "2", "2", 1),
        // Table 3.6.2.
        new("Carc.", "1A", "1A", 0.1),
        new("Carc.", "1B", "1B", 0.1),
        new("Carc.", "2", "2", 1),
        // Table 3.7.2.
        new("Repr.", "1A", "1A", 0.3),
        new("Repr.", "1B", "1B", 0.3),
        new("Repr.", "2", "2", 3),
        new("Lact.", "", "", 0.3),
        // Table 3.8.3.
        new("STOT SE", "1", "1", 10),
        new("STOT SE", "1", "2", 1),
        new("STOT SE", "2", "2", 10),
        // Table 3.9.4.
        new("STOT RE", "1", "1", 10),
        new("STOT RE", "1", "2", 1),
        new("STOT RE", "2", "2", 10),
        // Tables 3.11.2 and 4.2.2.
        new("ED HH", "1", "1", 0.1),
        new("ED HH", "2", "2", 1),
        new("ED ENV", "1", "1", 0.1),
        new("ED ENV", "2", "2", 1),
        // 4.3.3.1 and 4.4.3.1: each of the four stands as a class of its own.
        new("PBT", "", "", 0.1),
        new("vPvB", "", "", 0.1),
        new("PMT", "", "", 0.1),
        new("vPvM", "", "", 0.1),
        // Table 5.1.
        new("Ozone", "1", "1", 0.1),
    ];

    /// <summary>Categories from worst to mildest. A category without sub-category may be the worse one, so it comes before 1B.</summary>
    private static readonly string[] Severity = ["1A", "1", "1B", "2", ""];

    /// <summary>The classes that the mixture gets, the worst category of each.</summary>
    public static IEnumerable<FoundClass> Of(GivenMixture mixture, SecondEdition edition)
    {
        foreach (string hazardClass in Rules.Select(r => r.Class).Distinct())
        {
            List<AloneRule> own = [.. edition.OwnAloneRules.Where(r => r.Class == hazardClass)];
            List<AloneRule> rules = own.Count > 0 ? own : [.. Rules.Where(r => r.Class == hazardClass)];
            List<(string Category, Cause Cause)> reached =
            [
                .. mixture.Substances.SelectMany(s =>
                    Limits(s, hazardClass, rules)
                        .Where(l => Shares.Reaches(s.Percent, l.FromPercent))
                        .Select(l => (l.Category, new Cause(s.Name, s.Percent / l.FromPercent)))
                ),
            ];
            if (reached.Count > 0)
            {
                string worst = reached.MinBy(r => Array.IndexOf(Severity, r.Category)).Category;
                yield return new FoundClass(
                    new HazardText(hazardClass, worst, "").Code,
                    [.. reached.Where(r => r.Category == worst).Select(r => r.Cause)]
                );
            }
        }
    }

    /// <summary>
    /// The limits in force for a substance: its own, and the general one of each result that it has no own limit for
    /// (Art. 10, Annex I 1.1.2.1.1 and 1.1.3). A limit of its own counts even where the class itself is not declared, as with
    /// formaldehyde's limit for STOT SE 3 in Annex VI: the stricter reading of an incomplete declaration.
    /// </summary>
    private static IEnumerable<(string Category, double FromPercent)> Limits(
        GivenSubstance substance,
        string hazardClass,
        List<AloneRule> rules
    )
    {
        List<string> declared = [.. substance.Hazards.Where(h => h.Class == hazardClass && h.Code != "STOT SE 3").Select(h => h.Category)];
        List<(string Category, double FromPercent)> own =
        [
            .. substance
                .OwnLimits.Where(l => l.Result.Class == hazardClass && l.Result.Code != "STOT SE 3")
                .Select(l => (SubCategories.Settle(l.Result.Category, declared), l.FromPercent)),
        ];
        IEnumerable<(string, double)> general = rules
            .Where(r => declared.Contains(r.Ingredient) && !own.Exists(o => o.Category == r.Mixture))
            .Select(r => (r.Mixture, r.FromPercent));
        return own.Concat(general);
    }
}
