namespace Chandlery.Tests.SecondCalculation;

/// <summary>Acute toxicity by the additivity formula, each route by itself: 3.1.3.6.1 and 3.1.3.6.2.3.</summary>
internal static class AcuteToxicity
{
    private const double ManyUnknownPercent = 10;
    private const double StatedFromPercent = 1;

    /// <summary>The classes of the mixture.</summary>
    public static IEnumerable<FoundClass> Of(GivenMixture mixture, SecondEdition edition)
    {
        foreach (AcuteRoute route in AcuteRoute.All)
        {
            for (int category = 1; category <= AcuteScale.Of(route.Unsaid, edition).Upper.Length; category++)
            {
                // Each form has its own scale (Table 3.1.1). Of ingredients known in different forms the law says nothing: their
                // parts of the bound are added, which is the stricter reading and comes to the law's sum where all have one form.
                List<Cause> causes = Causes(mixture, route, category, edition);
                if (causes.Count > 0 && Shares.Reaches(causes.Sum(c => c.Weight), Known(mixture, route)))
                {
                    yield return new FoundClass($"Acute Tox. {category} ({route.Name})", causes);
                    break;
                }
            }
        }
    }

    /// <summary>
    /// The statement "x percent of the mixture consists of ingredient(s) of unknown acute toxicity" is due when one ingredient of
    /// 1 % or more has no usable data (3.1.3.6.2.2, from memory); an undeclared rest counts as such an ingredient.
    /// </summary>
    public static double? StatedUnknownPercent(GivenMixture mixture)
    {
        List<double> unknown =
        [
            mixture.UndeclaredPercent,
            .. mixture.Substances.Where(s => s.Classes is null && s.Estimates.Count == 0).Select(s => s.Percent),
        ];
        return unknown.Exists(u => Shares.Reaches(u, StatedFromPercent)) ? unknown.Sum() : null;
    }

    // What each substance fills of a category, in percent of the mixture; known in several forms, it counts by the worst.
    private static List<Cause> Causes(GivenMixture mixture, AcuteRoute route, int category, SecondEdition edition)
    {
        List<Cause> causes = [];
        foreach (GivenSubstance substance in mixture.Substances)
        {
            double most = 0;
            foreach (GivenForm form in route.Forms)
            {
                if (
                    Estimate(substance, route, form, edition) is { } estimate
                    && IsRelevant(substance.Percent, AcuteScale.Of(form, edition).CategoryOf(estimate))
                )
                {
                    most = Math.Max(most, substance.Percent * AcuteScale.Of(form, edition).Upper[category - 1] / estimate);
                }
            }

            if (most > 0)
            {
                causes.Add(new Cause(substance.Name, most));
            }
        }

        return causes;
    }

    // More than 10 % unknown, and exactly 10 % is not more: only then is the known part taken as the whole. The law counts
    // "relevant" unknown ingredients; here every unknown share counts, however small, which is the stricter reading.
    private static double Known(GivenMixture mixture, AcuteRoute route)
    {
        double unknown = UnknownPercent(mixture, route);
        return Shares.Exceeds(unknown, ManyUnknownPercent) ? 100 - unknown : 100;
    }

    /// <summary>
    /// Cut-off (Table 1.1): 0.1 % for categories 1 to 3, 1 % for milder ones; what is in no category is left out of the sum.
    /// </summary>
    private static bool IsRelevant(double percent, int category) =>
        category < AcuteScale.None && Shares.Reaches(percent, category <= 3 ? 0.1 : 1);

    /// <summary>The estimate that counts for a substance in one form; null when it has none.</summary>
    private static double? Estimate(GivenSubstance substance, AcuteRoute route, GivenForm form, SecondEdition edition)
    {
        int declared = substance
            .Hazards.Where(h => h.Class == "Acute Tox." && route.Statements.Contains(h.Statement))
            .Select(h => h.Category[0] - '0')
            .Where(c => c <= AcuteScale.Of(form, edition).Upper.Length)
            .Append(AcuteScale.None)
            .Min();
        List<GivenEstimate> given = [.. substance.Estimates.Where(e => route.Forms.Contains(e.Form))];
        double? figure = given.Where(e => e.Form == form).Min(e => (double?)e.Figure);
        if (declared == AcuteScale.None)
        {
            return figure;
        }

        double point = AcuteScale.Of(form, edition).PointOf(declared);
        if (given.Count == 0)
        {
            return form == route.Unsaid ? point : null;
        }

        // Figures that are all milder than the class contradict it: the class wins, in the forms that figures are given for.
        bool contradicted = given.TrueForAll(e => AcuteScale.Of(e.Form, edition).CategoryOf(e.Figure) > declared);
        return contradicted && figure is not null ? point : figure;
    }

    private static double UnknownPercent(GivenMixture mixture, AcuteRoute route) =>
        mixture.UndeclaredPercent
        + mixture.Substances.Where(s => s.Classes is null && !s.Estimates.Any(e => route.Forms.Contains(e.Form))).Sum(s => s.Percent);
}
