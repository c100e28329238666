using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Workbench.Desks;

/// <summary>Sheets and rolls of labels that the program knows.</summary>
internal static class LabelStocks
{
    private static readonly Lazy<IReadOnlyList<Stock>> Own = new(() =>
        [.. StockShelf.Names.Select(n => StockShelf.Find(n, new Problems())).OfType<Stock>()]
    );

    /// <summary>All there are.</summary>
    public static IReadOnlyList<Stock> All => Own.Value;
}
