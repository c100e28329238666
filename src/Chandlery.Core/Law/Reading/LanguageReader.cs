using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads the languages: statements of the law and words of our own, one file each.</summary>
internal static class LanguageReader
{
    public static IEnumerable<Language> Read(IReadOnlyDictionary<string, string> files, Func<string, Fields> open)
    {
        foreach (
            string path in files
                .Keys.Where(k =>
                    k.StartsWith("languages/", StringComparison.Ordinal) && k.EndsWith("/statements.yaml", StringComparison.Ordinal)
                )
                .Order(StringComparer.Ordinal)
        )
        {
            Fields statements = open(path);
            Fields words = open(path.Replace("/statements.yaml", "/words.yaml", StringComparison.Ordinal));
            string code = statements.Text("language", "en");
            words.OptionalText("language");
            words.OptionalText("name");
            words.OptionalText("source");
            words.OptionalText("checked");
            yield return new Language(
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
        }
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
