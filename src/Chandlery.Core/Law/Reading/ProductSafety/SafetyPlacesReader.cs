using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>Reads <c>product-safety/places.yaml</c>: under which law on product safety a place of sale is.</summary>
internal static class SafetyPlacesReader
{
    /// <summary>Short names of laws by country code.</summary>
    /// <param name="fields">The file.</param>
    /// <param name="known">Folders of laws.</param>
    public static IReadOnlyDictionary<string, string> Read(Fields fields, IReadOnlyCollection<string> known)
    {
        var places = new Dictionary<string, string>();
        foreach (Fields row in fields.Groups("laws"))
        {
            string id = row.Text("id", "union");
            if (!known.Contains(id))
            {
                string near = Suggestion.Nearest(id, known) is { } guess ? $"Did you mean '{guess}'?" : "";
                row.Problems.Add(row.PlaceOf("id"), $"There is no law on product safety named '{id}'.", near);
            }

            foreach (YamlScalar place in row.List("places").OfType<YamlScalar>())
            {
                if (!places.TryAdd(place.Text, id))
                {
                    row.Problems.Add(place.Place, $"'{place.Text}' stands here twice.");
                }
            }

            row.Done();
        }

        fields.Done();
        return places;
    }
}
