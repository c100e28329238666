using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading.ProductSafety;

/// <summary>
/// Reads <c>product-safety/places.yaml</c>: under which law on product safety a place of sale is. A place that nothing is known of is
/// named as such, so that no mistyped letter silently drops a law.
/// </summary>
internal static class SafetyPlacesReader
{
    private const string Unknown = "lawUnknown";

    /// <summary>Short names of laws by country code.</summary>
    /// <param name="fields">The file.</param>
    /// <param name="laws">Folders of laws.</param>
    /// <param name="placesOfSale">All places of sale, with where they stand.</param>
    public static IReadOnlyDictionary<string, string> Read(
        Fields fields,
        IReadOnlyCollection<string> laws,
        IReadOnlyList<Written<PlaceCode>> placesOfSale
    )
    {
        string[] codes = [.. placesOfSale.Select(p => p.Code.Text)];
        var places = new Dictionary<string, string>();
        foreach (Fields row in fields.Groups("laws"))
        {
            string id = row.Text("id", "union");
            if (!laws.Contains(id))
            {
                row.Problems.Add(row.PlaceOf("id"), $"There is no law on product safety named '{id}'.", Suggestion.DidYouMean(id, laws));
            }

            foreach (YamlScalar place in ReadPlaces(row, "places", codes))
            {
                if (!places.TryAdd(place.Text, id))
                {
                    row.Problems.Add(place.Place, $"'{place.Text}' stands here twice.");
                }
            }

            row.Done();
        }

        HashSet<string> named = [.. places.Keys, .. ReadPlaces(fields, Unknown, codes).Select(p => p.Text)];
        foreach (Written<PlaceCode> place in placesOfSale.Where(p => !named.Contains(p.Code.Text)))
        {
            fields.Problems.Add(
                place.Place,
                $"No law on product safety is named for '{place.Code}'.",
                $"Name it under a law in product-safety/places.yaml, or under '{Unknown}' there."
            );
        }

        fields.Done();
        return places;
    }

    private static List<YamlScalar> ReadPlaces(Fields row, string key, string[] codes)
    {
        List<YamlScalar> places = [.. row.List(key).OfType<YamlScalar>()];
        foreach (YamlScalar place in places.Where(p => !codes.Contains(p.Text)))
        {
            row.Problems.Add(place.Place, $"There is no place of sale '{place.Text}'.", Suggestion.DidYouMean(place.Text, codes));
        }

        return places;
    }
}
