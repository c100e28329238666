namespace Chandlery.Tests.SecondCalculation;

/// <summary>Hazards to water by the summation method: 4.1.3.5.5, Tables 4.1.1 and 4.1.2.</summary>
internal static class AquaticHazards
{
    // An ingredient of unknown hazard may be of Category 1, which is relevant from 0.1 % on (4.1.3.1, Table 1.1).
    private const double RelevantFromPercent = 0.1;

    /// <summary>
    /// The statement on components with unknown hazards to the aquatic environment is due when a relevant ingredient has no usable
    /// information (4.1.3.6.1, from memory: the paragraph is missing in the copy of the text that was read).
    /// </summary>
    public static double? StatedUnknownPercent(GivenMixture mixture)
    {
        List<double> unknown = [.. mixture.Substances.Where(s => s.Classes is null).Select(s => s.Percent)];
        return unknown.Exists(u => Shares.Reaches(u, RelevantFromPercent)) ? unknown.Sum() : null;
    }

    private const double SumPercent = 25;

    // 4.1.3.1; for Acute 1 and Chronic 1 divided by the M-factor.
    private const double WorstCutOffPercent = 0.1;
    private const double CutOffPercent = 1;

    /// <summary>The classes of the mixture.</summary>
    public static IEnumerable<FoundClass> Of(GivenMixture mixture, SecondEdition edition)
    {
        List<Cause> first = Weights(mixture, "Aquatic Acute 1", AcuteM, multiplied: true);
        List<Cause> second = Weights(mixture, "Aquatic Acute 2", _ => 1, multiplied: false);
        List<Cause> third = Weights(mixture, "Aquatic Acute 3", _ => 1, multiplied: false);

        // The Union knows the first alone.
        (string Category, List<Cause> Causes)[] steps =
        [
            ("1", first),
            ("2", [.. Times(10, first), .. second]),
            ("3", [.. Times(100, first), .. Times(10, second), .. third]),
        ];
        foreach (
            (string category, List<Cause> causes) in steps.Take(edition.HasMildCategories ? 3 : 1).Where(s => Reached(s.Causes)).Take(1)
        )
        {
            yield return new FoundClass("Aquatic Acute " + category, causes);
        }

        if (Chronic(mixture) is { } chronic)
        {
            yield return chronic;
        }
    }

    private static FoundClass? Chronic(GivenMixture mixture)
    {
        List<Cause> first = Weights(mixture, "Aquatic Chronic 1", ChronicM, multiplied: true);
        List<Cause> second = Weights(mixture, "Aquatic Chronic 2", _ => 1, multiplied: false);
        List<Cause> third = Weights(mixture, "Aquatic Chronic 3", _ => 1, multiplied: false);
        List<Cause> fourth = Weights(mixture, "Aquatic Chronic 4", _ => 1, multiplied: false);

        // In the sum of Chronic 4 a Chronic 1 counts without its M-factor; its cut-off stays 0.1/M (4.1.3.1).
        List<Cause> firstAlone = Weights(mixture, "Aquatic Chronic 1", ChronicM, multiplied: false);
        (string Category, List<Cause> Causes)[] steps =
        [
            ("1", first),
            ("2", [.. Times(10, first), .. second]),
            ("3", [.. Times(100, first), .. Times(10, second), .. third]),
            ("4", [.. firstAlone, .. second, .. third, .. fourth]),
        ];
        return steps.Where(s => Reached(s.Causes)).Select(s => new FoundClass("Aquatic Chronic " + s.Category, s.Causes)).FirstOrDefault();
    }

    private static List<Cause> Weights(GivenMixture mixture, string code, Func<GivenSubstance, double> m, bool multiplied)
    {
        bool worst = code is "Aquatic Acute 1" or "Aquatic Chronic 1";
        return
        [
            .. mixture
                .Substances.Where(s => s.Hazards.Any(h => h.Code == code))
                .Where(s => Shares.Reaches(s.Percent, worst ? WorstCutOffPercent / m(s) : CutOffPercent))
                .Select(s => new Cause(s.Name, multiplied ? s.Percent * m(s) : s.Percent)),
        ];
    }

    // 4.1.3.5.5.5 wants the M-factor of the sum's own kind. Where a supplier gives one only, it is taken for both: the
    // stricter reading. Where none is given, 1.
    private static double AcuteM(GivenSubstance substance) => substance.AcuteM ?? substance.ChronicM ?? 1;

    private static double ChronicM(GivenSubstance substance) => substance.ChronicM ?? substance.AcuteM ?? 1;

    private static IEnumerable<Cause> Times(double factor, List<Cause> causes) => causes.Select(c => c with { Weight = factor * c.Weight });

    private static bool Reached(List<Cause> causes) => Shares.Reaches(causes.Sum(c => c.Weight), SumPercent);
}
