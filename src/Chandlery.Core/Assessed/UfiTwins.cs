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

    // Many candles may share a number, and each is compared with what the others are.
    private readonly ConcurrentDictionary<long, IReadOnlyList<Composed>> compositions = new();

    /// <summary>Names of the other candles with its number and another composition.</summary>
    /// <param name="candle">The candle.</param>
    public IEnumerable<string> Of(Candle candle)
    {
        if (candle.FormulationNumber is not { } number || !byNumber.Value[number].Skip(1).Any())
        {
            return [];
        }

        IReadOnlyList<Composed> all = compositions.GetOrAdd(number, Compositions);
        Composed? own = all.FirstOrDefault(c => c.Candles.Exists(one => one.Id == candle.Id));
        return own is null ? [] : all.Where(c => c != own).SelectMany(c => c.Candles).Select(c => c.Name);
    }

    // A twin that cannot be composed says so in its own assessment.
    private List<Composed> Compositions(long number)
    {
        var different = new List<Composed>();
        foreach (Candle candle in byNumber.Value[number])
        {
            if (RecipeMaker.FromPlan(candle, catalogue, new Problems()) is not { } recipe)
            {
                continue;
            }

            Composition composition = Composer.Compose(recipe);
            Composed? known = different.Find(d => AreEqual(d.Composition.Ingredients, composition.Ingredients));
            if (known is null)
            {
                different.Add(new Composed(composition, [candle]));
            }
            else
            {
                known.Candles.Add(candle);
            }
        }

        return different;
    }

    private static bool AreEqual(IReadOnlyList<ComposedIngredient> ours, IReadOnlyList<ComposedIngredient> theirs) =>
        ours.Count == theirs.Count
        && ours.All(o => theirs.Any(t => t.Identity == o.Identity && IsSame(t.Low, o.Low) && IsSame(t.High, o.High)));

    private static bool IsSame(MassPercent a, MassPercent b) => Math.Abs(a.Value - b.Value) <= MassPercent.RelativeTolerance;

    private sealed record Composed(Composition Composition, List<Candle> Candles);
}
