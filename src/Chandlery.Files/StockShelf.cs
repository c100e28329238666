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
            return TextFile.Read(nameOrPath, nameOrPath, problems) is { } text
                ? StockReader.Read(text, nameOrPath, Path.GetFileNameWithoutExtension(nameOrPath), problems)
                : null;
        }

        string near = Suggestion.Nearest(nameOrPath, Names) is { } guess ? $"Did you mean '{guess}'? " : "";
        problems.Add(
            new TextPlace(nameOrPath, 0, 0),
            "There is no such label stock.",
            $"{near}Known: {string.Join(", ", Names)}; or name a file with 'declares: stock'."
        );
        return null;
    }
}
