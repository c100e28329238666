using Chandlery.Core.Declared;

namespace Chandlery.Workbench.Forms;

/// <summary>Finds what names a declaration.</summary>
internal static class Users
{
    /// <summary>What people call the candles, batches, waxes and lots that name it.</summary>
    public static IEnumerable<string> Of(Catalogue catalogue, string kind, string id) =>
        catalogue.All.Where(d => Names(d, kind).Contains(id)).Select(Called).Distinct();

    private static IEnumerable<string> Names(IDeclaration declared, string kind) =>
        (declared, kind) switch
        {
            (Candle { Vessel: { } vessel }, "vessel") => [vessel.Id],
            (Candle c, "wax" or "base") => [c.Wax.Id],
            (Candle c, "oil") => c.Oils.Select(o => o.Oil.Id),
            (Candle c, "extra") => c.Extras.Select(e => e.Extra.Id),
            (Wax w, "wax") => w.Blend.Select(p => p.Wax.Id),
            (Batch b, "candle") => [b.Candle.Id],
            (Batch b, "lot") => b.Lots.Select(l => l.Id),
            (Lot l, _) when l.Content.ToString().Equals(kind, StringComparison.OrdinalIgnoreCase) => [l.Of.Id],
            (Dispatch d, "batch") => [d.Batch.Id],
            (Weighing w, "batch") => [w.Batch.Id],
            (Incident { Batch: { } batch }, "batch") => [batch.Id],
            (Incident i, "candle") => [i.Candle.Id],
            (Test test, "candle") => [test.Candle.Id],
            (Test test, "vessel") => [test.Vessel.Id],
            (Test test, "wax") => [test.Wax.Id],
            (Trial trial, "oil") => trial.Oils.Select(o => o.Oil.Id),
            (Trial { Wax: { } wax }, "wax") => [wax.Id],
            (GiftSet set, "candle") => set.Parts.Select(p => p.Product.Id),
            _ => [],
        };

    private static string Called(IDeclaration declared) =>
        declared switch
        {
            Candle c => c.Name,
            Wax w => w.Name,
            Batch b => b.Code,
            Lot l => l.Code,
            Trial trial => trial.Name,
            GiftSet set => set.Name,
            _ => declared.Id,
        };
}
