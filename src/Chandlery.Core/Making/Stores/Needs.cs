using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Core.Making.Stores;

/// <summary>What a candle or a batch takes out of store.</summary>
public static class Needs
{
    private const string SomeWick = "wick";

    /// <summary>What one candle takes, as planned, without what stays in the jug.</summary>
    /// <param name="candle">The candle.</param>
    /// <param name="recipe">Its shares.</param>
    /// <param name="catalogue">Where its vessel is.</param>
    public static IReadOnlyList<Need> OfCandle(Candle candle, Recipe recipe, Catalogue catalogue)
    {
        double net = candle.NetMass.Value;
        return
        [
            .. recipe.Waxes.Select(w => new Need(new Material(LotContent.Wax, w.Wax.Id), w.Wax.Name, net * w.Share.Value / 100)),
            .. recipe.Oils.Select(o => new Need(new Material(LotContent.Oil, o.Oil.Id), o.Oil.Name, net * o.Share.Value / 100)),
            .. recipe.Extras.Select(e => new Need(new Material(LotContent.Extra, e.Extra.Id), e.Extra.Name, net * e.Share.Value / 100)),
            .. Pieces(candle, catalogue, 1),
        ];
    }

    /// <summary>What a batch took, as it was weighed.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="catalogue">Where its candle, oils and waxes are.</param>
    /// <param name="problems">Collects what is missing.</param>
    public static IReadOnlyList<Need> OfBatch(Batch batch, Catalogue catalogue, Problems problems)
    {
        if (
            catalogue.Find<Candle>(batch.Candle, problems) is not { } candle
            || RecipeMaker.FromBatch(batch, candle, catalogue, problems) is not { } recipe
        )
        {
            return [];
        }

        double topUp = batch.TopUp is PlainTopUp { Amount: WeighedAmount { Weight: var weight } } ? weight.Value : 0;
        double waxes = recipe.Waxes.Sum(w => w.Share.Value);
        double whole = (batch.WaxWeight.Value + topUp) / waxes;
        return
        [
            .. recipe.Waxes.Select(w => new Need(new Material(LotContent.Wax, w.Wax.Id), w.Wax.Name, whole * w.Share.Value)),
            .. recipe.Oils.Select(o => new Need(new Material(LotContent.Oil, o.Oil.Id), o.Oil.Name, whole * o.Share.Value)),
            .. recipe.Extras.Select(e => new Need(new Material(LotContent.Extra, e.Extra.Id), e.Extra.Name, whole * e.Share.Value)),
            .. Pieces(candle, catalogue, batch.Made),
        ];
    }

    private static IEnumerable<Need> Pieces(Candle candle, Catalogue catalogue, int? made)
    {
        Vessel? vessel = null;
        int pieces = 1;
        if (candle.Vessel is { } named)
        {
            vessel = catalogue.OfKind<Vessel>().FirstOrDefault(v => v.Id == named.Id);
            pieces = vessel?.Pieces ?? 1;
            yield return new Need(new Material(LotContent.Vessel, named.Id), vessel?.Name ?? named.Id, made * pieces);
        }

        if (candle.Wicks.Count > 0)
        {
            string wick = candle.Wicks.Kind ?? SomeWick;
            yield return new Need(new Material(LotContent.Wick, wick), wick, made * pieces * candle.Wicks.Count);
        }

        // The vessel stands in the list of packaging as well: it is one thing, bought once.
        foreach (PackagingPart part in (candle.Packaging ?? []).Where(p => !IsVessel(p, candle, vessel)))
        {
            yield return new Need(new Material(LotContent.Packaging, part.Part), part.Part, made);
        }
    }

    private static bool IsVessel(PackagingPart part, Candle candle, Vessel? vessel) =>
        candle.Vessel?.Id.Contains(part.Part, StringComparison.OrdinalIgnoreCase) == true
        || vessel?.Name.Contains(part.Part, StringComparison.OrdinalIgnoreCase) == true;
}
