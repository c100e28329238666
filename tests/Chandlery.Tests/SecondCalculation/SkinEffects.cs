namespace Chandlery.Tests.SecondCalculation;

/// <summary>
/// Skin corrosion and irritation where effects add up: 3.2.3.3.2 and Table 3.2.3, with specific limits (3.2.3.3.5, number from
/// memory).
/// </summary>
/// <remarks>
/// Substances with limits of their own enter the sums as share over limit, and the sum is compared with 1 (ECHA, Guidance on
/// the Application of the CLP Criteria, from memory). The kinds of 3.2.3.3.4 (acids, aldehydes...) are an expert's decision
/// and are left out.
/// </remarks>
internal static class SkinEffects
{
    private const double CorrosionPercent = 5;

    // "10 x Skin Corr. + Skin Irrit. 2 >= 10 %" is the same as limits of 1 % and 10 %; so is "1 % <= Skin Corr. < 5 %".
    private const double IrritationByCorrosivePercent = 1;
    private const double IrritationByIrritantPercent = 10;

    // Table 1.1.
    private const double CutOffPercent = 1;

    private static readonly string[] Steps = ["1A", "1B", "1C"];

    /// <summary>The class of the mixture, or none.</summary>
    public static FoundClass? Of(GivenMixture mixture, SecondEdition edition)
    {
        List<GivenSubstance> counted = [.. mixture.Substances.Where(Counts)];
        List<Cause> corrosive = Weights(counted, s => Lowest(Corrosion(s)));
        if (Shares.Reaches(corrosive.Sum(c => c.Weight), 1))
        {
            // Note to Table 3.2.3: one relevant ingredient without sub-category leaves the mixture without one. A trace that
            // only counts by caution (see Counts) is not what the note means.
            return counted.Exists(s => ReachesCutOff(s) && Corrosion(s).Exists(l => l.Category == "1"))
                ? new FoundClass("Skin Corr. 1", corrosive)
                : Steps.Select(step => Corrosive(counted, step)).OfType<FoundClass>().FirstOrDefault()
                    ?? new FoundClass("Skin Corr. 1", corrosive);
        }

        List<Cause> irritant = Weights(counted, s => Lowest(Irritation(s)));
        return Shares.Reaches(irritant.Sum(c => c.Weight), 1) ? new FoundClass("Skin Irrit. 2", irritant)
            : edition.HasMildCategories ? Mild(counted)
            : null;
    }

    /// <summary>
    /// Category 3 of the UN GHS, Table 3.2.3 (from memory): from a tenth of the limits of Category 2 on, or where what is itself of
    /// Category 3 counts beside the others.
    /// </summary>
    private static FoundClass? Mild(IReadOnlyCollection<GivenSubstance> counted)
    {
        List<Cause> worse = Weights(counted, s => General(s) / 10);
        List<Cause> all = Weights(counted, s => General(s) ?? (IsOf(s, "3") ? IrritationByIrritantPercent : null));
        return new[] { worse, all }
            .Where(causes => Shares.Reaches(causes.Sum(c => c.Weight), 1))
            .Select(causes => new FoundClass("Skin Irrit. 3", causes))
            .FirstOrDefault();
    }

    private static double? General(GivenSubstance substance) =>
        substance.Is("Skin Corr.") ? IrritationByCorrosivePercent
        : IsOf(substance, "2") ? IrritationByIrritantPercent
        : null;

    private static bool IsOf(GivenSubstance substance, string category) =>
        substance.Hazards.Any(h => h.Class == "Skin Irrit." && h.Category == category);

    /// <summary>Sub-category 1B counts 1A and 1B together, 1C all three (note to Table 3.2.3).</summary>
    private static FoundClass? Corrosive(List<GivenSubstance> counted, string step)
    {
        string[] steps = Steps[..(Array.IndexOf(Steps, step) + 1)];
        List<Cause> causes = Weights(counted, s => Lowest(Corrosion(s).Where(l => steps.Contains(l.Category))));
        return Shares.Reaches(causes.Sum(c => c.Weight), 1) ? new FoundClass("Skin Corr. " + step, causes) : null;
    }

    /// <summary>
    /// A corrosive ingredient may matter below 1 % (3.2.3.3.1), and nothing says from where on: it counts whatever its share,
    /// which is the stricter reading.
    /// </summary>
    private static bool Counts(GivenSubstance substance) => substance.Is("Skin Corr.") || ReachesCutOff(substance);

    /// <summary>Cut-off: the lower of Table 1.1 and the specific limits of this class (1.1.2.2.2(a)).</summary>
    private static bool ReachesCutOff(GivenSubstance substance) =>
        Shares.Reaches(
            substance.Percent,
            substance
                .OwnLimits.Where(l => l.Result.Class is "Skin Corr." or "Skin Irrit.")
                .Select(l => l.FromPercent)
                .Append(CutOffPercent)
                .Min()
        );

    /// <summary>
    /// From where on a substance makes the mixture corrosive: its own limits, and the general one where it has none for its category.
    /// </summary>
    private static List<(string Category, double FromPercent)> Corrosion(GivenSubstance substance)
    {
        List<string> declared = [.. substance.Hazards.Where(h => h.Class == "Skin Corr.").Select(h => h.Category)];
        List<(string Category, double FromPercent)> own =
        [
            .. substance
                .OwnLimits.Where(l => l.Result.Class == "Skin Corr.")
                .Select(l => (SubCategories.Settle(l.Result.Category, declared), l.FromPercent)),
        ];
        return [.. own, .. declared.Where(d => !own.Exists(o => o.Category == d)).Select(d => (d, CorrosionPercent))];
    }

    private static IEnumerable<(string Category, double FromPercent)> Irritation(GivenSubstance substance)
    {
        List<double> own = [.. substance.OwnLimits.Where(l => l.Result.Class == "Skin Irrit.").Select(l => l.FromPercent)];
        if (own.Count > 0)
        {
            return own.Select(o => ("2", o));
        }

        return General(substance) is { } general ? [("2", general)] : [];
    }

    private static double? Lowest(IEnumerable<(string Category, double FromPercent)> limits) => limits.Min(l => (double?)l.FromPercent);

    private static List<Cause> Weights(IEnumerable<GivenSubstance> substances, Func<GivenSubstance, double?> limit) =>
        [.. substances.Where(s => limit(s) is not null).Select(s => new Cause(s.Name, s.Percent / limit(s)!.Value))];
}
