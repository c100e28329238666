using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>What rows of the law on product safety have in common.</summary>
internal static class SafetyRows
{
    /// <summary>When a row holds.</summary>
    public static InForce Days(Fields row) => new(row.OptionalDay("from"), row.OptionalDay("until"));

    /// <summary>Whether a row stops the sale or is only told.</summary>
    public static bool Stops(Fields row) => row.Choice("gravity", "stop", "look") == "stop";

    /// <summary>The sorts of product that a row is about; null where it names none.</summary>
    public static IReadOnlyList<ProductSort>? Sorts(Fields row) => row.Has("of") ? row.Enumerations<ProductSort>("of") : null;

    /// <summary>Country codes that some place of the law has.</summary>
    public static IReadOnlyList<string> Places(Fields row, string key, IReadOnlyDictionary<string, string> known)
    {
        foreach (YamlValue item in row.List(key))
        {
            string text = (item as YamlScalar)?.Text ?? "?";
            if (!known.ContainsKey(text))
            {
                string near = Suggestion.DidYouMean(text, known.Keys);
                row.Problems.Add(item.Place, $"'{text}' is no place of product-safety/places.yaml.", near);
            }
        }

        return row.Texts(key);
    }
}
