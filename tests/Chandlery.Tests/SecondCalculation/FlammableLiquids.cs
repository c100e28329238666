namespace Chandlery.Tests.SecondCalculation;

/// <summary>
/// Flammable liquids: 2.6.1, Table 2.6.1 and 2.6.4.5. Measurements and the word of whoever tested the finished liquid decide;
/// shares never do (2.6.4.1).
/// </summary>
/// <remarks>Where a measurement and a supplier's class differ the worse one counts, which is the stricter reading.</remarks>
internal static class FlammableLiquids
{
    /// <summary>The category that stands for "not a flammable liquid".</summary>
    public const int None = 5;

    private const double LowFlash = 23;
    private const double LowBoiling = 35;
    private const double MiddleFlash = 60;

    // From above here on a negative test L.2 counts.
    private const double RelievedFlash = 35;

    /// <summary>The category, <see cref="None"/>, or null where what is known leaves several open.</summary>
    public static int? Category(GivenLiquid liquid, SecondEdition edition)
    {
        List<int> open = [.. LeftOpen(liquid, edition)];
        if (Told(liquid) is not { } told)
        {
            return open.Count == 1 ? open[0] : null;
        }

        if (!Counts(liquid.Flash, edition))
        {
            return told;
        }

        List<int> worse = [.. open.Select(o => Math.Min(o, told)).Distinct()];
        return worse.Count == 1 ? worse[0]
            : open.Contains(told) ? told
            : null;
    }

    private static IEnumerable<int> LeftOpen(GivenLiquid liquid, SecondEdition edition)
    {
        (double from, double to) = (liquid.Flash, Counts(liquid.Flash, edition)) switch
        {
            ({ Above: false } exact, true) => (exact.Celsius, exact.Celsius),

            // "Above 60" is not 60 itself, nor is "above 93" 93.
            ({ } bound, true) => (Math.BitIncrement(bound.Celsius), double.PositiveInfinity),
            _ => (double.NegativeInfinity, double.PositiveInfinity),
        };
        bool relieved = edition.RelievesWhatDoesNotBurnOn && liquid.SustainsCombustion == false;
        if (from < LowFlash && liquid.Boiling is null or <= LowBoiling)
        {
            yield return 1;
        }

        if (from < LowFlash && liquid.Boiling is null or > LowBoiling)
        {
            yield return 2;
        }

        if (from <= (relieved ? RelievedFlash : MiddleFlash) && to >= LowFlash)
        {
            yield return 3;
        }

        if (from <= edition.HighestFlash && to > MiddleFlash && edition.HighestFlash > MiddleFlash)
        {
            yield return 4;
        }

        if (to > edition.HighestFlash || (relieved && to > RelievedFlash))
        {
            yield return None;
        }
    }

    // A calculated flash point (2.6.4.2) is left out, which is the stricter reading; an open cup gives too high a figure.
    private static bool Counts(GivenFlash? flash, SecondEdition edition) =>
        flash is not null && edition.ClosedCupMethods.Any(m => flash.Method.Contains(m, StringComparison.Ordinal));

    private static int? Told(GivenLiquid liquid) =>
        liquid.Class is null ? null
        : liquid.Class == GivenLiquid.NotClassified ? None
        : HazardText.Read(liquid.Class).Category[0] - '0';
}
