using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Finds label stocks: the program's own by name, or a file of the user's.</summary>
public static class StockShelf
{
    /// <summary>Names of the program's own stocks.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [.. ShippedFiles.Stocks().Keys.Select(k => Path.GetFileNameWithoutExtension(k)!).Order(StringComparer.Ordinal)];

    /// <summary>The stock, or null with problems.</summary>
    public static Stock? Find(string nameOrPath, Problems problems)
    {
        if (ShippedFiles.Stocks().TryGetValue(nameOrPath + ".yaml", out string? shipped))
        {
            return StockReader.Read(shipped, $"data/stocks/{nameOrPath}.yaml", nameOrPath, problems);
        }

        if (File.Exists(nameOrPath))
        {
            Stock? own = TextFile.Read(nameOrPath, nameOrPath, problems) is { } text
                ? StockReader.Read(text, nameOrPath, Path.GetFileNameWithoutExtension(nameOrPath), problems)
                : null;
            return own is { Label.OutlineFile: not null } ? WithOutline(own, problems) : own;
        }

        string near = Suggestion.Nearest(nameOrPath, Names) is { } guess ? $"Did you mean '{guess}'? " : "";
        problems.Add(
            new TextPlace(nameOrPath, 0, 0),
            "There is no such label stock.",
            $"{near}Known: {string.Join(", ", Names)}; or name a file with 'declares: stock'."
        );
        return null;
    }

    // Only with its outline is it known whether the labels find room on the page.
    private static Stock? WithOutline(Stock stock, Problems problems)
    {
        var own = new Problems();
        Stock? whole = OutlineFiles.Take(stock.Label, stock.Place.File, own) is { } label ? stock with { Label = label } : null;
        if (whole?.Sheet is { } grid)
        {
            StockReader.CheckGrid(grid, whole.Label, stock.Place, own);
        }

        problems.AddRange(own.Found);
        return own.None ? whole : null;
    }
}
