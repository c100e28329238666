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

        return known;
    }

    /// <summary>All languages, in the order of their codes.</summary>
    public static IEnumerable<Language> Read(LawFiles files, IReadOnlyCollection<string> known)
    {
        IReadOnlySet<string>? words = null;
        foreach (
            string path in files.Paths.Where(k =>
                k.StartsWith("languages/", StringComparison.Ordinal) && k.EndsWith(StatementsFile, StringComparison.Ordinal)
            )
        )
        {
            yield return ReadLanguage(files, path, known, ref words);
        }
    }

    private static Language ReadLanguage(LawFiles files, string path, IReadOnlyCollection<string> known, ref IReadOnlySet<string>? keys)
    {
        Fields statements = files.Open(path);
        Fields words = files.Open(path.Replace(StatementsFile, "/words.yaml", StringComparison.Ordinal));
        keys ??= WordKeys(files);
        string code = statements.Text("language", "en");
        string folder = path.Split('/')[1];
        foreach (Fields file in new[] { statements, words })
        {
            if (file.OptionalText("language") is { } language && language != folder)
            {
                file.Problems.Add(
                    file.PlaceOf("language"),
                    $"The language '{language}' lies in the folder '{folder}'.",
                    "Give both one name."
                );
            }
        }

        words.OptionalText("name");
        words.OptionalText("source");
        words.OptionalText("checked");
        var read = new Language(
            code,
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
        return read;
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
