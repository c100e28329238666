namespace Chandlery.Tests.SecondCalculation;

/// <summary>EUH018, "in use may form flammable/explosive vapour-air mixture": Annex II 1.1.</summary>
internal static class FlammableVapour
{
    /// <summary>
    /// True when the statement is due: on a liquid that is not flammable itself, if it is classified at all (Art. 25(1)), and somebody
    /// says that it forms such vapour, or nobody says anything and a part of it is a flammable liquid, which is the stricter reading.
    /// </summary>
    /// <param name="mixture">The mixture.</param>
    /// <param name="flammable">Its category as a flammable liquid; null where unknown, and for solids.</param>
    /// <param name="classified">Whether it has any class.</param>
    public static bool IsStated(GivenMixture mixture, int? flammable, bool classified) =>
        mixture.Liquid is { } liquid
        && flammable == FlammableLiquids.None
        && classified
        && (liquid.FormsVapour ?? mixture.Substances.Any(s => s.Is("Flam. Liq.")));
}
