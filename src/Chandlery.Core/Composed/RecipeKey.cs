using Chandlery.Core.Declared;

namespace Chandlery.Core.Composed;

/// <summary>
/// What tells recipes apart: the products, as objects, and every share in them, to the last bit; and what was measured of a liquid.
/// Recipes with equal keys compose to the same.
/// </summary>
internal readonly struct RecipeKey : IEquatable<RecipeKey>
{
    private readonly object[] products;
    private readonly double[] shares;
    private readonly LiquidFacts? liquid;

    public RecipeKey(Recipe recipe, LiquidFacts? liquid)
    {
        products = [.. recipe.Oils.Select(o => o.Oil), .. recipe.Waxes.Select(w => w.Wax), .. recipe.Extras.Select(e => e.Extra)];
        shares =
        [
            .. recipe.Oils.SelectMany(o => new[] { o.Share.Value, o.ShareOfBlend.Value }),
            .. recipe.Waxes.Select(w => w.Share.Value),
            .. recipe.Extras.SelectMany(e => new[] { e.Share.Value, e.OfWax.Value }),
            recipe.MeltLoadOfWax.Value,
            recipe.MeltLoadOfCandle.Value,
            recipe.Load.Value,
            recipe.TopUp.Value,
        ];
        this.liquid = liquid;
    }

    public bool Equals(RecipeKey other) =>
        shares.AsSpan().SequenceEqual(other.shares)
        && products.AsSpan().SequenceEqual(other.products, ReferenceEqualityComparer.Instance)
        && liquid == other.liquid;

    public override bool Equals(object? obj) => obj is RecipeKey other && Equals(other);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (double share in shares)
        {
            hash.Add(share);
        }

        foreach (object product in products)
        {
            hash.Add(product, ReferenceEqualityComparer.Instance);
        }

        return hash.ToHashCode();
    }
}
