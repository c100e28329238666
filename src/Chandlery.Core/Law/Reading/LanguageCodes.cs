using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads codes of languages.</summary>
internal static class LanguageCodes
{
    // ISO 639-1 codes of the official languages of the places that the program knows; a place may need one that it has no
    // texts in yet, and is then refused, so the texts at hand are no measure of what is a language.
    private static readonly string[] Known =
    [
        "bg",
        "cs",
        "da",
        "de",
        "el",
        "en",
        "es",
        "et",
        "fi",
        "fr",
        "ga",
        "hr",
        "hu",
        "is",
        "it",
        "lt",
        "lv",
        "mt",
        "nl",
        "no",
        "pl",
        "pt",
        "ro",
        "sk",
        "sl",
        "sv",
    ];

    /// <summary>A list of codes; what is none is noted.</summary>
    public static IReadOnlyList<string> Read(Fields fields, string key)
    {
        foreach (YamlValue item in fields.List(key))
        {
            if (item is not YamlScalar scalar || !Known.Contains(scalar.Text))
            {
                fields.Problems.Add(
                    item.Place,
                    $"'{(item as YamlScalar)?.Text}' is no language that is known here.",
                    $"Write one of: {string.Join(", ", Known)}."
                );
            }
        }

        return fields.Texts(key);
    }
}
