using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>The data and templates that travel inside the program, each of which a folder of the user's may replace.</summary>
public static class ShippedFiles
{
    private static readonly string[] NotLaw = ["demo/", "example-stopped/", "schemas/", "starter/", "guide/", "page/", "told/"];

    /// <summary>Texts under <c>data/</c> by relative path.</summary>
    /// <param name="overrides">A folder laid out like <c>data/</c> whose files win; null for none.</param>
    /// <param name="problems">Receives unreadable files.</param>
    public static IReadOnlyDictionary<string, string> Data(string? overrides, Problems problems) =>
        Read("data/", overrides, name => !NotLaw.Any(folder => name.StartsWith(folder, StringComparison.Ordinal)), problems);

    /// <summary>The program's own label stocks by file name.</summary>
    public static IReadOnlyDictionary<string, string> Stocks() => Read("data/stocks/", null, _ => true, new Problems());

    /// <summary>The files of a new maker's folder by relative path.</summary>
    public static IReadOnlyDictionary<string, string> Starter() => Read("data/starter/", null, _ => true, new Problems());

    /// <summary>The files of the example, an invented maker's folder, by relative path.</summary>
    public static IReadOnlyDictionary<string, string> Example() => Read("data/demo/", null, _ => true, new Problems());

    /// <summary>The words of the local page by file name, a file for each language.</summary>
    public static IReadOnlyDictionary<string, string> PageWords() => Read("data/page/", null, _ => true, new Problems());

    /// <summary>What the program's own English sentences are in other languages, a file for each.</summary>
    public static IReadOnlyDictionary<string, string> Told() => Read("data/told/", null, _ => true, new Problems());

    /// <summary>Templates by relative path.</summary>
    /// <param name="overrides">A folder laid out like <c>templates/</c> whose files win; null for none.</param>
    /// <param name="problems">Receives unreadable files.</param>
    public static IReadOnlyDictionary<string, string> Templates(string? overrides, Problems problems) =>
        Read("templates/", overrides, _ => true, problems);

    private static ShippedTexts Read(string prefix, string? overrides, Func<string, bool> wanted, Problems problems)
    {
        var instead = new Dictionary<string, string>(StringComparer.Ordinal);
        if (overrides is not null)
        {
            AddOverrides(instead, overrides, wanted, problems);
        }

        return new ShippedTexts(prefix, wanted, instead);
    }

    private static void AddOverrides(Dictionary<string, string> files, string folder, Func<string, bool> wanted, Problems problems)
    {
        if (!Directory.Exists(folder))
        {
            problems.Add(
                new TextPlace(folder, 0, 0),
                "There is no such folder.",
                "Name a folder with files to use instead of the program's own."
            );
            return;
        }

        foreach (string path in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            string name = Path.GetRelativePath(folder, path).Replace('\\', '/');
            if (wanted(name) && TextFile.ReadListed(path, path, problems) is { } text)
            {
                files[name] = text;
            }
        }
    }
}
