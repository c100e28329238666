using Chandlery.Core.Composed;
using Chandlery.Core.Declared;

namespace Chandlery.Core.Notified;

/// <summary>Finds the bought mixtures of a candle whose composition is not known in full.</summary>
public static class MixturesInMixture
{
    /// <summary>Oils, waxes and extras of which a part or an exact share is not declared, in the order of the recipe.</summary>
    public static IReadOnlyList<MixtureInMixture> Of(Recipe recipe) =>
        [
            .. recipe
                .Oils.Where(o => o.Oil.NotDeclared.Count > 0 || !IsWhole(o.Oil.Ingredients))
                .Select(o => new MixtureInMixture(o.Oil.Name, o.Oil.Supplier, o.Share, o.Oil.Document, o.Oil.Source)),
            .. recipe
                .Waxes.Where(w => !IsWhole(w.Wax.Ingredients))
                .Select(w => new MixtureInMixture(w.Wax.Name, w.Wax.Supplier, w.Share, "", w.Wax.Source)),
            .. recipe
                .Extras.Where(e => !IsWhole(e.Extra.Ingredients))
                .Select(e => new MixtureInMixture(e.Extra.Name, e.Extra.Supplier, e.Share, "", e.Extra.Source)),
        ];

    // Ranges leave open how much there is of what: only low ends that come to the whole say all.
    private static bool IsWhole(IReadOnlyList<Ingredient> table) =>
        !Composition.IsMoreThanRounding(new Quantities.MassPercent(100 - table.Sum(i => i.Share.Low.Value)));
}
