using Chandlery.Core.Declared;

namespace Chandlery.Core.SafetyFiles.Duties;

/// <summary>Which materials of a batch no lot is named of.</summary>
public static class LotCoverage
{
    /// <summary>The materials, by name; empty when every one has its lot.</summary>
    public static IReadOnlyList<string> Lacking(Batch batch, Candle candle, Catalogue catalogue)
    {
        List<Lot> named = [.. batch.Lots.Select(r => catalogue.OfKind<Lot>().FirstOrDefault(l => l.Id == r.Id)).OfType<Lot>()];
        Wax? wax = catalogue.OfKind<Wax>().FirstOrDefault(w => w.Id == candle.Wax.Id);
        IEnumerable<(LotContent Content, string Id)> needed =
        [
            .. batch.Oils.Select(p => (LotContent.Oil, p.Oil.Id)),
            .. wax is { Blend.Count: > 0 } ? wax.Blend.Select(p => (LotContent.Wax, p.Wax.Id)) : [(LotContent.Wax, candle.Wax.Id)],
            .. batch.Extras.Select(p => (LotContent.Extra, p.Extra.Id)),
            .. candle.Vessel is { } vessel ? new[] { (LotContent.Vessel, vessel.Id) } : [],
            .. candle.Wicks.Count > 0 ? new[] { (LotContent.Wick, candle.Wicks.Kind ?? "the wick") } : [],
        ];
        return
        [
            .. needed
                .Distinct()
                .Where(n =>
                    !named.Exists(l =>
                        l.Content == n.Content && (l.Of.Id == n.Id || n.Content == LotContent.Wick && candle.Wicks.Kind is null)
                    )
                )
                .Select(n => n.Id),
        ];
    }
}
