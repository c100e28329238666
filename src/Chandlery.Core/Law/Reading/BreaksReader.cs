using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads where the long words of a language may be broken.</summary>
internal static class BreaksReader
{
    private const string FileName = "/breaks.yaml";

    /// <summary>The places of a language, by its folder.</summary>
    public static WordBreaks Read(string folder, LawFiles files)
    {
        Fields fields = files.Open($"languages/{folder}{FileName}");
        LanguageReader.CheckFolder(fields, folder);
        fields.OptionalText("source");
        fields.OptionalText("checked");
        var words = new List<string>();
        foreach (YamlValue item in fields.List("words"))
        {
            if (item is YamlScalar { Text: var text } && MayBeBroken(text))
            {
                words.Add(text);
            }
            else
            {
                fields.Problems.Add(
                    item.Place,
                    $"'{(item as YamlScalar)?.Text}' must be a word with a hyphen at each place where it may be broken.",
                    $"Letters alone, and {WordBreaks.ShortestPart} at least before and behind each hyphen."
                );
            }
        }

        fields.Done();
        return new WordBreaks(words);
    }

    private static bool MayBeBroken(string word)
    {
        string[] parts = word.Split('-');
        return parts.Length > 1 && parts.All(p => p.Length >= WordBreaks.ShortestPart && p.All(char.IsLetter));
    }
}
