namespace Chandlery.Tests.SecondCalculation;

/// <summary>
/// Serious eye damage and eye irritation where effects add up: 3.3.3.3.2 and Table 3.3.3, with specific limits (3.3.3.3.5, number
/// from memory).
/// </summary>
/// <remarks>
/// A corrosive substance counts as one that damages eyes, and its eye limits count, whether or not an eye class is declared
/// for it; a substance in both classes counts once. Its skin limits say nothing about eyes.
/// </remarks>
internal static class EyeEffects
{
    private const double DamagePercent = 3;

    // "10 x (Skin Corr. 1 + Eye Dam. 1) + Eye Irrit. 2 >= 10 %", "1 % <= sum < 3 %".
    private const double IrritationByDamagingPercent = 1;
    private const double IrritationByIrritantPercent = 10;

    // Table 1.1.
    private const double CutOffPercent = 1;

    /// <summary>The class of the mixture, or none.</summary>
    /// <param name="mixture">The mixture.</param>
    /// <param name="skin">Its class for skin: a corrosive mixture damages eyes too (3.3.2.2.2, Annex III Part 1).</param>
    /// <param name="edition">The law.</param>
    public static FoundClass? Of(GivenMixture mixture, FoundClass? skin, SecondEdition edition)
    {
        List<GivenSubstance> counted = [.. mixture.Substances.Where(Counts)];
        List<Cause> damaging = Weights(counted, DamageLimit);
        if (Shares.Reaches(damaging.Sum(c => c.Weight), 1))
        {
            return new FoundClass("Eye Dam. 1", damaging);
        }

        if (skin is not null && skin.Code.StartsWith("Skin Corr.", StringComparison.Ordinal))
        {
            // What damages eyes but would not do by itself may be named too, after what is corrosive.
            IEnumerable<Cause> beside = damaging.Where(d => skin.Causes.All(c => c.Name != d.Name)).Select(d => d with { Weight = 0 });
            return new FoundClass("Eye Dam. 1", [.. skin.Causes, .. beside]);
        }

        List<Cause> irritant = Weights(counted, IrritationLimit);
        return Shares.Reaches(irritant.Sum(c => c.Weight), 1) ? new FoundClass("Eye Irrit. " + edition.EyeIrritant, irritant) : null;
    }

    /// <summary>
    /// Cut-off: the lower of Table 1.1 and the specific limits of this class (1.1.2.2.2(a)). What is corrosive or damages eyes
    /// may matter below it (3.3.3.3.1) and counts whatever its share, which is the stricter reading.
    /// </summary>
    private static bool Counts(GivenSubstance substance) =>
        Damages(substance) || Shares.Reaches(substance.Percent, Own(substance, "Eye Dam.", "Eye Irrit.").Append(CutOffPercent).Min());

    private static double? DamageLimit(GivenSubstance substance) =>
        Own(substance, "Eye Dam.").Min(l => (double?)l) ?? (Damages(substance) ? DamagePercent : null);

    private static double? IrritationLimit(GivenSubstance substance) =>
        Own(substance, "Eye Irrit.").Min(l => (double?)l)
        ?? (
            Damages(substance) ? IrritationByDamagingPercent
            : substance.Is("Eye Irrit.") ? IrritationByIrritantPercent
            : null
        );

    private static bool Damages(GivenSubstance substance) => substance.Is("Eye Dam.") || substance.Is("Skin Corr.");

    private static IEnumerable<double> Own(GivenSubstance substance, params string[] classes) =>
        substance.OwnLimits.Where(l => classes.Contains(l.Result.Class)).Select(l => l.FromPercent);

    private static List<Cause> Weights(IEnumerable<GivenSubstance> substances, Func<GivenSubstance, double?> limit) =>
        [.. substances.Where(s => limit(s) is not null).Select(s => new Cause(s.Name, s.Percent / limit(s)!.Value))];
}
