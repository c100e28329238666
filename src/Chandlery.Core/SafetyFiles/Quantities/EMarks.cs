using Chandlery.Core.Declared;
using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.SafetyFiles.Quantities;

/// <summary>Whether the e-mark may stand on batches of candles that use it.</summary>
public static class EMarks
{
    /// <summary>Batches of candles with the e-mark, each with its newest weighing; null where there is none.</summary>
    public static IEnumerable<(Batch Batch, WeighingVerdict? Newest)> Of(Catalogue catalogue, QuantityRules rules)
    {
        foreach (Batch batch in catalogue.OfKind<Batch>())
        {
            Candle? candle = catalogue.OfKind<Candle>().FirstOrDefault(c => c.Id == batch.Candle.Id);
            if (candle is { EMark: true })
            {
                Weighing? newest = catalogue.OfKind<Weighing>().Where(w => w.Batch.Id == batch.Id).MaxBy(w => w.On);
                yield return (batch, newest is null ? null : WeighingVerdict.Of(newest, candle, rules));
            }
        }
    }
}
