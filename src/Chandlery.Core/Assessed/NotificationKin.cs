using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Notified;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Assessed;

/// <summary>Finds what a candle's notification to the poison centres shares with the maker's other candles.</summary>
/// <param name="catalogue">All declarations.</param>
internal sealed class NotificationKin(Catalogue catalogue)
{
    /// <summary>Packages of the same composition, and the candles that may be told with it.</summary>
    /// <param name="subject">The candle.</param>
    /// <param name="verdict">What the law makes of it.</param>
    /// <param name="places">Where it is sold.</param>
    public SharedNotification Of(Subject subject, Verdict verdict, IReadOnlyList<Place> places)
    {
        Candle candle = subject.Candle;
        List<SoldPackage> packages = [PackageOf(subject.Vessel, subject.Contents, candle)];
        var groupWith = new List<string>();
        foreach (Candle other in catalogue.OfKind<Candle>().Where(c => c.Id != candle.Id && SoldInOne(c, places)))
        {
            // What is wrong with another candle is said of that candle.
            var silent = new Problems();
            if (RecipeMaker.FromPlan(other, catalogue, silent) is not { } recipe)
            {
                continue;
            }

            if (candle.FormulationNumber is not null && other.FormulationNumber == candle.FormulationNumber)
            {
                packages.AddRange(PackageOf(other, silent));
            }
            else if (MayShare(verdict, subject.Recipe, recipe, other))
            {
                groupWith.Add(other.Name);
            }
        }

        return new SharedNotification([.. packages.Distinct()], groupWith);
    }

    private static bool MayShare(Verdict verdict, Recipe own, Recipe other, Candle candle) =>
        verdict.Law.Edition.PoisonCentres is { } rules
        && GroupComparison.DifferInLittlePerfumeAlone(rules.Group, own, other)
        && GroupComparison.HaveSameClasses(
            rules.Group,
            verdict.Classification,
            verdict.Law.ForStock(candle.OnMarketSince).Judge(Composer.Compose(other) with { Liquid = candle.Liquid }).Classification
        );

    private IEnumerable<SoldPackage> PackageOf(Candle candle, Problems problems)
    {
        if (
            candle.Vessel is { } named
            && catalogue.Find<Vessel>(named, problems) is { } vessel
            && catalogue.Find<Wax>(candle.Wax, problems) is { } wax
        )
        {
            yield return PackageOf(vessel, Contents.Of(vessel, candle, wax), candle);
        }
    }

    private static SoldPackage PackageOf(Vessel vessel, Millilitres contents, Candle candle) =>
        new(vessel.Name, vessel.Material, vessel.Brimful, vessel.Fill is null ? null : contents, candle.NetMass, candle.NetVolume);

    private static bool SoldInOne(Candle candle, IReadOnlyList<Place> places) =>
        candle.SoldIn.Any(s => places.Any(p => p.IsMeantBy(s.Code)));
}
