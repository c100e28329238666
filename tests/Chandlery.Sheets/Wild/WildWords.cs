using System.Reflection;
using System.Text.RegularExpressions;

namespace Chandlery.Sheets.Wild;

/// <summary>The words of random sheets in one language.</summary>
public sealed partial class WildWords
{
    public static readonly IReadOnlyList<string> Languages = ["en", "de", "fr", "es", "it", "nl", "pl"];
    private static readonly Lazy<IReadOnlyDictionary<string, string[]>> Table = new(ReadTable);
    private readonly int column;

    public WildWords(string language, IReadOnlyDictionary<string, string> data)
    {
        Language = language;
        column = Languages.ToList().IndexOf(language);
        Titles = TitleLine()
            .Matches(data[$"languages/{language}/safety-data-sheet.yaml"])
            .DistinctBy(m => m.Groups["n"].Value)
            .ToDictionary(m => m.Groups["n"].Value, m => m.Groups["text"].Value.Trim('"'));
    }

    /// <summary>Code of the language.</summary>
    public string Language { get; }

    /// <summary>Titles of sections and subsections by number, from the program's data.</summary>
    public IReadOnlyDictionary<string, string> Titles { get; }

    public bool HasDecimalComma => Language != "en";

    public string First(string key) => All(key)[0];

    public string Any(string key, Random dice)
    {
        string[] all = All(key);
        return all[dice.Next(all.Length)];
    }

    private string[] All(string key) => Table.Value[key][column].Split(';');

    private static Dictionary<string, string[]> ReadTable()
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("words.txt")!;
        using var reader = new StreamReader(stream);
        return reader
            .ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Where(l => l[0] != '#')
            .Select(l => l.Split('|', StringSplitOptions.TrimEntries))
            .ToDictionary(l => l[0], l => l[1..]);
    }

    [GeneratedRegex("""^\s+"(?<n>[0-9]+(?:\.[0-9]+)?)":\s*(?<text>.+)$""", RegexOptions.Multiline)]
    private static partial Regex TitleLine();
}
