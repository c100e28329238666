using System.Text.RegularExpressions;
using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads the languages, a folder each: statements of the law and words of our own.</summary>
internal static partial class LanguageReader
{
    private const string StatementsFile = "/statements.yaml";
    private const string ReferenceLanguage = "languages/en" + StatementsFile;
    private const string ReferenceWords = "languages/en" + WordsFile;
    private const string ReferenceKinds = "languages/en" + KindsFile;
    private const string WordsFile = "/words.yaml";
    private const string KindsFile = "/kinds.yaml";

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
        Fields words = files.Open($"languages/{folder}{WordsFile}");
        Fields kinds = files.Open($"languages/{folder}{KindsFile}");
        Dictionary<string, string> english = EnglishWords(files);
        CheckFolder(words, folder);
        CheckFolder(kinds, folder);
        kinds.OptionalText("source");
        kinds.OptionalText("checked");
        words.OptionalText("name");
        words.OptionalText("source");
        words.OptionalText("checked");
        var origin = new TextOrigin(
            statements.Text("source", "the law's text"),
            statements.Text("checked", "how"),
            statements.OptionalFlag("verified") ?? false
        );
        var language = new Language
        {
            Code = CheckFolder(statements, folder),
            Name = statements.Text("name", "English"),
            Origin = origin,
            Apart = Apart(statements, origin, known),
            Official = Statements(statements, "statements", known),
            Printed = Statements(statements, "printed", known),
            Words = Words([words, kinds], "words", english),
            Safety = Words([words, kinds], "safety", english),
            Figures = Format(words),
            Caution = words.Text("caution", "a caution"),
            ForEyes = Statements(statements, "forEyes", known),
            Breaks = BreaksReader.Read(folder, files),
        };
        CheckNaming(statements, language, files.Open(ReferenceLanguage));
        statements.Done();
        words.Done();
        kinds.Done();
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
    public static HashSet<string> WordKeys(LawFiles files) => [.. EnglishWords(files).Keys];

    private static Dictionary<string, string> EnglishWords(LawFiles files)
    {
        var texts = new Dictionary<string, string>();
        foreach (Fields english in (Fields[])[files.Open(ReferenceWords), files.Open(ReferenceKinds)])
        {
            foreach (YamlEntry entry in english.Entries("words").Concat(english.Entries("safety")))
            {
                texts[entry.Key] = (entry.Value as YamlScalar)?.Text ?? "";
            }
        }

        return texts;
    }

    private static Dictionary<StatementCode, string> Statements(Fields fields, string key, IReadOnlyCollection<string> known)
    {
        var texts = new Dictionary<StatementCode, string>();
        foreach (YamlEntry entry in fields.Entries(key))
        {
            if (StatementCode.TryParse(entry.Key) is not { } code || !known.Contains(entry.Key))
            {
                Unknown(fields, entry.Key, entry.KeyPlace, known);
            }
            else if (Text(fields, entry) is { } text)
            {
                texts[code] = text;
            }
        }

        return texts;
    }

    private static Dictionary<StatementCode, TextOrigin> Apart(Fields fields, TextOrigin rest, IReadOnlyCollection<string> known)
    {
        var origins = new Dictionary<StatementCode, TextOrigin>();
        foreach (Fields row in fields.Groups("apart"))
        {
            var origin = new TextOrigin(row.OptionalText("source") ?? rest.Source, row.Text("checked", "how"), row.Flag("verified"));
            foreach (YamlValue item in row.List("codes"))
            {
                string text = (item as YamlScalar)?.Text ?? "?";
                if (known.Contains(text) && StatementCode.TryParse(text) is { } code)
                {
                    origins[code] = origin;
                }
                else
                {
                    Unknown(fields, text, item.Place, known);
                }
            }

            row.Done();
        }

        return origins;
    }

    // A language has every word that English has, and no other; what English leaves open must not get lost on the way.
    private static Dictionary<string, string> Words(IReadOnlyList<Fields> files, string key, Dictionary<string, string> known)
    {
        var texts = new Dictionary<string, string>();
        foreach ((Fields fields, YamlEntry entry) in files.SelectMany(f => f.Entries(key).Select(e => (f, e))))
        {
            if (!known.TryGetValue(entry.Key, out string? inEnglish))
            {
                string near = Suggestion.DidYouMean(entry.Key, known.Keys);
                fields.Problems.Add(entry.KeyPlace, $"'{entry.Key}' is no word that the papers use.", near);
            }
            else if (Text(fields, entry) is { } text)
            {
                CheckMarks(fields, entry, text, inEnglish);
                texts[entry.Key] = text;
            }
        }

        return texts;
    }

    /// <summary>A text leaves open what its English text leaves open; another is noted.</summary>
    public static void CheckMarks(Fields fields, YamlEntry entry, string text, string english)
    {
        string[] marks = [.. Mark().Matches(english).Select(m => m.Value).Order(StringComparer.Ordinal)];
        if (!Mark().Matches(text).Select(m => m.Value).Order(StringComparer.Ordinal).SequenceEqual(marks))
        {
            fields.Problems.Add(
                entry.Value.Place,
                $"'{entry.Key}' must have the same marks as its English text.",
                $"It needs: {string.Join(", ", marks.DefaultIfEmpty("none"))}."
            );
        }
    }

    // A statement that names substances in English names them in every language.
    private static void CheckNaming(Fields fields, Language language, Fields english)
    {
        foreach (YamlEntry entry in english.Entries("printed").Where(e => e.Value is YamlScalar { Text: var text } && Mark().IsMatch(text)))
        {
            if (
                StatementCode.TryParse(entry.Key) is { } code
                && language.Official.ContainsKey(code)
                && !Mark().IsMatch(language.Printed.GetValueOrDefault(code) ?? "")
            )
            {
                fields.Problems.Add(
                    fields.PlaceOf("printed"),
                    $"{code} must say where the names of the substances go.",
                    "Write it under 'printed' with {names} in their place."
                );
            }
        }
    }

    private static void Unknown(Fields fields, string text, TextPlace place, IReadOnlyCollection<string> known)
    {
        string near = Suggestion.DidYouMean(text, known);
        fields.Problems.Add(place, $"There is no statement '{text}'.", near);
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

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Mark();
}
