using Chandlery.Core.Declared;

namespace Chandlery.Core.SafetyFiles.Quantities;

/// <summary>How much packaging of a material went to a country in a year.</summary>
/// <param name="Country">Country code.</param>
/// <param name="Year">The year.</param>
/// <param name="Material">The material.</param>
/// <param name="Grams">Grams of it.</param>
public sealed record PackagingSum(string Country, int Year, PackagingMaterial Material, double Grams)
{
    /// <summary>The sums over all dispatches of candles whose packaging is declared.</summary>
    public static IReadOnlyList<PackagingSum> Of(Catalogue catalogue) =>
        [
            .. Sent(catalogue)
                .SelectMany(s =>
                    (s.Candle.Packaging ?? []).Select(p =>
                        (s.Dispatch.Country, s.Dispatch.On.Year, p.Material, p.Weight.Value * s.Dispatch.Pieces)
                    )
                )
                .GroupBy(p => (p.Country, p.Year, p.Material))
                .Select(g => new PackagingSum(g.Key.Country, g.Key.Year, g.Key.Material, g.Sum(p => p.Item4)))
                .OrderBy(s => s.Year)
                .ThenBy(s => s.Country, StringComparer.Ordinal)
                .ThenBy(s => s.Material),
        ];

    /// <summary>Candles that went out and whose packaging is not declared: their grams are missing from every sum.</summary>
    public static IReadOnlyList<string> NotDeclared(Catalogue catalogue) =>
        [.. Sent(catalogue).Where(s => s.Candle.Packaging is null).Select(s => s.Candle.Id).Distinct().Order(StringComparer.Ordinal)];

    private static IEnumerable<(Dispatch Dispatch, Candle Candle)> Sent(Catalogue catalogue)
    {
        Dictionary<string, Batch> batches = catalogue.OfKind<Batch>().ToDictionary(b => b.Id);
        Dictionary<string, Candle> candles = catalogue.OfKind<Candle>().ToDictionary(c => c.Id);
        return catalogue
            .OfKind<Dispatch>()
            .Where(d => batches.ContainsKey(d.Batch.Id) && candles.ContainsKey(batches[d.Batch.Id].Candle.Id))
            .Select(d => (d, candles[batches[d.Batch.Id].Candle.Id]));
    }
}
