using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>places.yaml</c>: places of sale with the edition that rules there and the languages that a label needs.</summary>
internal static class PlacesReader
{
    /// <summary>The places, and why there are no texts in a language that some of them need.</summary>
    public static (IReadOnlyList<Place> Places, IReadOnlyDictionary<string, string> WithoutTexts) Read(
        Fields fields,
        IReadOnlyCollection<string> editions
    )
    {
        var places = new List<Place>();
        foreach (Fields row in fields.Groups("places"))
        {
            bool either = row.Has("eitherOf");
            row.OptionalText("note");
            string edition = row.Text("edition", "eu-clp");
            if (!editions.Contains(edition))
            {
                string near = Suggestion.Nearest(edition, editions) is { } guess ? $"Did you mean '{guess}'?" : "";
                row.Problems.Add(row.PlaceOf("edition"), $"There is no edition of the law named '{edition}'.", near);
            }

            IReadOnlyList<string> languages = LanguageCodes.Read(row, either ? "eitherOf" : "languages");
            places.Add(new Place(row.Text("code", "IE"), row.Text("name", "Ireland"), edition, languages, either));
            row.Done();
        }

        var without = new Dictionary<string, string>();
        foreach (Fields row in fields.Groups("withoutTexts"))
        {
            string because = row.Text("because", "a reason");
            foreach (string code in LanguageCodes.Read(row, "languages"))
            {
                without[code] = because;
            }

            row.Done();
        }

        fields.Done();
        return (places, without);
    }
}
