namespace Chandlery.Tests.SecondCalculation;

/// <summary>Aspiration hazard: 3.10.3.3.1.1 and 3.10.3.3.1.2. It takes a liquid; a candle is solid at 40 degrees.</summary>
internal static class Aspiration
{
    private const double SumPercent = 10;
    private const double HighestViscosity = 20.5;

    // 3.10.3.3.1.1, Table 1.1.
    private const double CutOffPercent = 1;

    /// <summary>The class of the mixture, or none. A viscosity that nobody has measured may be low enough.</summary>
    public static FoundClass? Of(GivenMixture mixture)
    {
        if (mixture.Liquid is null or { Viscosity: > HighestViscosity })
        {
            return null;
        }

        List<Cause> causes =
        [
            .. mixture
                .Substances.Where(s => s.Is("Asp. Tox.") && Shares.Reaches(s.Percent, CutOffPercent))
                .Select(s => new Cause(s.Name, s.Percent)),
        ];
        return Shares.Reaches(causes.Sum(c => c.Weight), SumPercent) ? new FoundClass("Asp. Tox. 1", causes) : null;
    }
}
