using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>What rows of the law on product safety have in common.</summary>
internal static class SafetyRows
{
    /// <summary>When a row holds.</summary>
    public static InForce Days(Fields row) => new(row.OptionalDay("from"), row.OptionalDay("until"));

    /// <summary>Whether a row stops the sale or is only told.</summary>
    public static bool Stops(Fields row) => row.Choice("gravity", "stop", "look") == "stop";

    /// <summary>Closes a row: how it was checked must stand there, and which stricter reading was taken may.</summary>
    public static void Close(Fields row)
    {
        row.Text("confidence", "how it was checked");
        row.OptionalText("stricter");
        row.Done();
    }

    /// <summary>Country codes that some place of the law has.</summary>
    public static IReadOnlyList<string> Places(Fields row, string key, IReadOnlyDictionary<string, string> known)
    {
        foreach (YamlValue item in row.List(key))
        {
            string text = (item as YamlScalar)?.Text ?? "?";
            if (!known.ContainsKey(text))
            {
                string near = Suggestion.Nearest(text, known.Keys) is { } guess ? $"Did you mean '{guess}'?" : "";
                row.Problems.Add(item.Place, $"'{text}' is no place of product-safety/places.yaml.", near);
            }
        }

        return row.Texts(key);
    }
}
