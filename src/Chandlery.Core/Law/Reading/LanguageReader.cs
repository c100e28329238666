using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads a language: statements of the law and words of our own, one file each.</summary>
internal static class LanguageReader
{
    public static Language Read(string folder, Func<string, Fields> open)
    {
        Fields statements = open($"languages/{folder}/statements.yaml");
        Fields words = open($"languages/{folder}/words.yaml");
        string code = statements.Text("language", "en");
        if (code != folder)
        {
            statements.Problems.Add(
                statements.PlaceOf("language"),
                $"The language '{code}' stands in the folder '{folder}'.",
                $"Write 'language: {folder}', or rename the folder."
            );
        }

        words.OptionalText("language");
        words.OptionalText("name");
        words.OptionalText("source");
        words.OptionalText("checked");
        var language = new Language(
            code,
            statements.Text("name", "English"),
            statements.Text("source", "the law's text"),
            statements.Text("checked", "how"),
            statements.OptionalFlag("verified") ?? false,
            Texts(statements, "statements"),
            Texts(statements, "printed"),
            Texts(words, "words"),
            Texts(words, "safety"),
            words.Text("caution", "a caution")
        );
        statements.Done();
        words.Done();
        return language;
    }

    private static Dictionary<string, string> Texts(Fields fields, string key)
    {
        var texts = new Dictionary<string, string>();
        foreach (YamlEntry entry in fields.Entries(key))
        {
            if (entry.Value is YamlScalar { Text.Length: > 0 } scalar)
            {
                texts[entry.Key] = scalar.Text;
            }
            else
            {
                fields.Problems.Add(entry.Value.Place, $"'{entry.Key}' must be a text.");
            }
        }

        return texts;
    }
}
