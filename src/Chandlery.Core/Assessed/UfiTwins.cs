using System.Collections.Concurrent;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Assessed;

/// <summary>Finds candles that share a formulation number, and so a UFI, though their compositions differ.</summary>
/// <param name="catalogue">All declarations.</param>
internal sealed class UfiTwins(Catalogue catalogue)
{
    private readonly Lazy<ILookup<long, Candle>> byNumber = new(() =>
        catalogue.OfKind<Candle>().Where(c => c.FormulationNumber is not null).ToLookup(c => c.FormulationNumber!.Value)
    );

    // Each of many candles with one number is compared with all the others.
    private readonly ConcurrentDictionary<Candle, Composition?> planned = new(ReferenceEqualityComparer.Instance);

    /// <summary>Names of the other candles with its number and another composition.</summary>
    /// <param name="candle">The candle.</param>
    public IEnumerable<string> Of(Candle candle) =>
        candle.FormulationNumber is { } number && byNumber.Value[number].Skip(1).Any() && Planned(candle) is { } own
            ? byNumber
                .Value[number]
                .Where(c => c.Id != candle.Id && Planned(c) is { } other && !AreEqual(own.Ingredients, other.Ingredients))
                .Select(c => c.Name)
            : [];

    // A twin that cannot be composed says so in its own assessment.
    private Composition? Planned(Candle candle) =>
        planned.GetOrAdd(candle, c => RecipeMaker.FromPlan(c, catalogue, new Problems()) is { } recipe ? Composer.Compose(recipe) : null);

    private static bool AreEqual(IReadOnlyList<ComposedIngredient> ours, IReadOnlyList<ComposedIngredient> theirs) =>
        ours.Count == theirs.Count
        && ours.All(o => theirs.Any(t => t.Identity == o.Identity && IsSame(t.Low, o.Low) && IsSame(t.High, o.High)));

    private static bool IsSame(MassPercent a, MassPercent b) => Math.Abs(a.Value - b.Value) <= MassPercent.RelativeTolerance;
}
