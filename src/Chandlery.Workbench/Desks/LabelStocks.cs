using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Yaml;

namespace Chandlery.Workbench.Desks;

/// <summary>Sheets and rolls of labels: the program's own, and those that the folder declares.</summary>
internal static class LabelStocks
{
    private static readonly Lazy<IReadOnlyList<Stock>> Own = new(() =>
        [.. StockShelf.Names.Select(n => StockShelf.Find(n, new Problems())).OfType<Stock>()]
    );

    /// <summary>All there are; the folder's go before the program's of the same name.</summary>
    public static IReadOnlyList<Stock> Of(Workroom room) =>
        [.. room.Folder().Catalogue.OfKind<Stock>().Concat(Own.Value).DistinctBy(s => s.Id)];
}
