using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads lists of codes of languages and places; what has not the form of one is noted with its place.</summary>
internal static class CodeLists
{
    /// <summary>Codes of languages.</summary>
    public static IReadOnlyList<Written<LanguageCode>> Languages(Fields fields, string key) =>
        Read(fields, key, LanguageCode.TryParse, "is no code of a language", "Write two small letters, such as de or fr.");

    /// <summary>Places of sale, by code or name.</summary>
    public static IReadOnlyList<Written<PlaceName>> Places(Fields fields, string key) =>
        Read(
            fields,
            key,
            PlaceName.TryParse,
            "is no place of sale",
            "Write its code or its name, such as IE for Ireland or GB for Great Britain."
        );

    private static List<Written<T>> Read<T>(Fields fields, string key, Func<string, T?> parse, string wrong, string remedy)
        where T : class
    {
        var codes = new List<Written<T>>();
        foreach (YamlValue item in fields.List(key))
        {
            string text = (item as YamlScalar)?.Text.Trim() ?? "?";
            if (parse(text) is { } code)
            {
                codes.Add(new Written<T>(code, item.Place));
            }
            else
            {
                fields.Problems.Add(item.Place, $"'{text}' {wrong}.", remedy);
            }
        }

        return codes;
    }
}
