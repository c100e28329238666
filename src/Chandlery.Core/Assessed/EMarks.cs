using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Assessed;

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
                yield return (batch, Newest(batch, candle, catalogue, rules));
            }
        }
    }

    /// <summary>Whether the mark is printed on a label; null for a candle that does not use it.</summary>
    /// <param name="candle">The candle.</param>
    /// <param name="batch">The batch that the label is for; null for labels of the candle, which every batch gets.</param>
    /// <param name="places">Where the label is good for.</param>
    /// <param name="catalogue">The maker's declarations.</param>
    /// <param name="law">The law on product safety.</param>
    public static EMarkState? On(Candle candle, Batch? batch, IReadOnlyList<Place> places, Catalogue catalogue, ProductSafetyLaw law)
    {
        if (!candle.EMark)
        {
            return null;
        }

        var known = new List<QuantityRules>();
        foreach (Place place in places)
        {
            if (law.For(law.Quantities, place.Code) is not { } rules)
            {
                return No($"The e-mark is not printed: no rule on the contents of packages is known for {place.Name}.", Citation.None);
            }

            known.Add(rules);
        }

        return known.Select(rules => WhyNot(candle, batch, catalogue, rules)).OfType<EMarkState>().FirstOrDefault()
            ?? new EMarkState(new Millimetres(known.Max(r => r.MarkHeightMm)), null);
    }

    private static EMarkState? WhyNot(Candle candle, Batch? batch, Catalogue catalogue, QuantityRules rules)
    {
        if (candle.NetVolume is not null)
        {
            return No("The e-mark is not printed: the contents are declared in millilitres, and weighings tell grams.", rules.Clause);
        }

        if (rules.RowFor(candle.NetMass.Value) is null)
        {
            return No($"The e-mark is not printed: the law has no tolerance for {candle.NetMass}.", rules.Clause);
        }

        List<Batch> batches = batch is null ? [.. catalogue.BatchesOf(candle)] : [batch];
        if (batches.Count == 0)
        {
            return No("The e-mark is not printed: no batch is declared that was weighed.", rules.Clause);
        }

        foreach (Batch one in batches)
        {
            switch (Newest(one, candle, catalogue, rules))
            {
                case null:
                    return No($"The e-mark is not printed: batch {one.Code} was not weighed.", rules.Clause);
                case { Passes: not true } newest:
                    return No($"The e-mark is not printed: weighing {newest.Weighing.Id} of batch {one.Code} does not pass.", rules.Clause);
            }
        }

        return null;
    }

    private static WeighingVerdict? Newest(Batch batch, Candle candle, Catalogue catalogue, QuantityRules rules) =>
        catalogue.OfKind<Weighing>().Where(w => w.Batch.Id == batch.Id).MaxBy(w => w.On) is { } newest
            ? WeighingVerdict.Of(newest, candle, rules)
            : null;

    private static EMarkState No(string why, Citation clause) => new(null, new Finding(Gravity.Look, why, clause));
}
