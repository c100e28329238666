using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads the languages, a folder each: statements of the law and words of our own.</summary>
internal static class LanguageReader
{
    private const string StatementsFile = "/statements.yaml";
    private const string ReferenceLanguage = "languages/en" + StatementsFile;

    /// <summary>The codes of all statements: those that English has, which every other language is measured by.</summary>
    public static IReadOnlyCollection<string> KnownStatements(LawFiles files)
    {
        Fields fields = files.Open(ReferenceLanguage);
        var known = new HashSet<string>();
        foreach (YamlEntry entry in fields.Entries("statements").Concat(fields.Entries("printed")))
        {
            if (StatementCode.TryParse(entry.Key) is null)
            {
                fields.Problems.Add(
                    entry.KeyPlace,
                    $"'{entry.Key}' is no code of a statement.",
                    "Write it as the law does, such as H317, EUH208 or P302+P352."
                );
            }

            known.Add(entry.Key);
        }

        if (!fields.Has("statements"))
        {
            fields.Problems.Add(
                fields.FirstPlace,
                "'statements' is missing.",
                "English has the text of every statement: all else is measured by it."
            );
        }

        return known;
    }

    /// <summary>The language of a folder.</summary>
    public static Language Read(string folder, LawFiles files, IReadOnlyCollection<string> known)
    {
        Fields statements = files.Open($"languages/{folder}{StatementsFile}");
        Fields words = files.Open($"languages/{folder}/words.yaml");
        HashSet<string> keys = WordKeys(files);
        CheckFolder(words, folder);
        words.OptionalText("name");
        words.OptionalText("source");
        words.OptionalText("checked");
        var language = new Language(
            CheckFolder(statements, folder),
            statements.Text("name", "English"),
            statements.Text("source", "the law's text"),
            statements.Text("checked", "how"),
            statements.OptionalFlag("verified") ?? false,
            Statements(statements, "statements", known),
            Statements(statements, "printed", known),
            Words(words, "words", keys),
            Words(words, "safety", keys),
            Format(words),
            words.Text("caution", "a caution")
        );
        statements.Done();
        words.Done();
        return language;
    }

    /// <summary>The language of a file, which is that of its folder; another is noted.</summary>
    public static string CheckFolder(Fields fields, string folder)
    {
        string code = fields.Text("language", folder);
        if (code != folder)
        {
            fields.Problems.Add(
                fields.PlaceOf("language"),
                $"The language '{code}' stands in the folder '{folder}'.",
                $"Write 'language: {folder}', or rename the folder."
            );
        }

        return code;
    }

    private static FigureFormat Format(Fields words)
    {
        Fields format = words.Group("format", "{ decimal: \",\" }");
        var read = new FigureFormat(format.Choice("decimal", ".", ",")[0]);
        format.Done();
        return read;
    }

    /// <summary>The keys of all words of our own: those that English has.</summary>
    public static HashSet<string> WordKeys(LawFiles files)
    {
        Fields english = files.Open("languages/en/words.yaml");
        return [.. english.Entries("words").Concat(english.Entries("safety")).Select(e => e.Key)];
    }

    private static Dictionary<StatementCode, string> Statements(Fields fields, string key, IReadOnlyCollection<string> known)
    {
        var texts = new Dictionary<StatementCode, string>();
        foreach (YamlEntry entry in fields.Entries(key))
        {
            if (StatementCode.TryParse(entry.Key) is not { } code || !known.Contains(entry.Key))
            {
                string near = Suggestion.Nearest(entry.Key, known) is { } guess ? $"Did you mean '{guess}'?" : "";
                fields.Problems.Add(entry.KeyPlace, $"There is no statement '{entry.Key}'.", near);
            }
            else if (Text(fields, entry) is { } text)
            {
                texts[code] = text;
            }
        }

        return texts;
    }

    // A language has every word that English has, and no other.
    private static Dictionary<string, string> Words(Fields fields, string key, IReadOnlySet<string> known)
    {
        var texts = new Dictionary<string, string>();
        foreach (YamlEntry entry in fields.Entries(key))
        {
            if (!known.Contains(entry.Key))
            {
                string near = Suggestion.Nearest(entry.Key, known) is { } guess ? $"Did you mean '{guess}'?" : "";
                fields.Problems.Add(entry.KeyPlace, $"'{entry.Key}' is no word that the papers use.", near);
            }
            else if (Text(fields, entry) is { } text)
            {
                texts[entry.Key] = text;
            }
        }

        return texts;
    }

    private static string? Text(Fields fields, YamlEntry entry)
    {
        if (entry.Value is YamlScalar { Text.Length: > 0 } scalar)
        {
            return scalar.Text;
        }

        fields.Problems.Add(entry.Value.Place, $"'{entry.Key}' must be a text.");
        return null;
    }
}
