using Chandlery.Core.Declared;
using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyFiles;

/// <summary>What kinds of product declarations are of, and what an English text on several of them calls them.</summary>
/// <param name="kinds">All kinds.</param>
public sealed class DeclaredKinds(IEnumerable<ProductKind> kinds)
{
    private readonly Dictionary<string, ProductKind> known = kinds.ToDictionary(k => k.Id);

    private static readonly LocalWords Product = new(new Dictionary<string, string> { ["candle"] = "product", ["candles"] = "products" });

    /// <summary>The kind of a candle.</summary>
    public ProductKind Of(Candle candle) => known[candle.Kind?.Id ?? ProductKind.Usual];

    /// <summary>A sentence of our own on candles, as it is said of these together: of several kinds, one of them no candle, as of products.</summary>
    public string Say(string text, IEnumerable<Candle> candles)
    {
        List<ProductKind> reached = [.. candles.Select(Of).Distinct()];
        return reached.Count == 1 ? reached[0].Say(text)
            : reached.TrueForAll(k => k.Burns) ? text
            : Product.In(text);
    }
}
