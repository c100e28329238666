using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>places.yaml</c>: places of sale with the edition that rules there and the languages that a label needs.</summary>
internal static class PlacesReader
{
    private static readonly PlaceCode StandIn = PlaceCode.TryParse("IE")!;

    /// <summary>The places, why there are no texts in a language that some of them need, and where each place's code stands.</summary>
    /// <param name="fields">The file.</param>
    /// <param name="editions">The editions that there are.</param>
    /// <param name="languages">The languages that there are texts in.</param>
    public static (
        IReadOnlyList<Place> Places,
        IReadOnlyDictionary<string, string> WithoutTexts,
        IReadOnlyList<Written<PlaceCode>> Codes
    ) Read(Fields fields, IReadOnlyCollection<string> editions, IReadOnlyCollection<string> languages)
    {
        (Dictionary<string, string> without, List<Written<LanguageCode>> lacking) = ReadWithoutTexts(fields);
        string[] known = [.. languages, .. without.Keys];
        var places = new List<Place>();
        var codes = new List<Written<PlaceCode>>();
        foreach (Fields row in fields.Groups("places"))
        {
            bool either = row.Has("eitherOf");
            row.OptionalText("note");
            IReadOnlyList<string> alsoCalled = row.Texts("alsoCalled");
            string edition = row.Text("edition", "eu-clp");
            if (!editions.Contains(edition))
            {
                row.Problems.Add(
                    row.PlaceOf("edition"),
                    $"There is no edition of the law named '{edition}'.",
                    Suggestion.DidYouMean(edition, editions)
                );
            }

            PlaceCode code = ReadCode(row, places);
            codes.Add(new Written<PlaceCode>(code, row.PlaceOf("code")));
            places.Add(
                new Place(code, row.Text("name", "Ireland"), edition, ReadLanguages(row, either ? "eitherOf" : "languages", known), either)
                {
                    AlsoCalled = alsoCalled,
                }
            );
            row.Done();
        }

        string[] needed = [.. places.SelectMany(p => p.Languages).Select(l => l.Text).Distinct()];
        foreach (Written<LanguageCode> language in lacking.Where(l => !needed.Contains(l.Code.Text)))
        {
            fields.Problems.Add(
                language.Place,
                $"No place needs the language '{language.Code}'.",
                Suggestion.DidYouMean(language.Code, needed)
            );
        }

        fields.Done();
        return (places, without, codes);
    }

    private static PlaceCode ReadCode(Fields row, List<Place> before)
    {
        string text = row.Text("code", "IE");
        PlaceCode? code = PlaceCode.TryParse(text);
        if (code is null)
        {
            row.Problems.Add(row.PlaceOf("code"), $"'{text}' is no code of a place of sale.", "Write two capitals, such as IE.");
        }
        else if (before.Exists(p => p.Code == code))
        {
            row.Problems.Add(row.PlaceOf("code"), $"The place '{text}' stands here twice.");
        }

        return code ?? StandIn;
    }

    // A place may need a language that there are no texts in; it is refused there, so the reason must stand in the same file.
    private static List<LanguageCode> ReadLanguages(Fields row, string key, string[] known)
    {
        IReadOnlyList<Written<LanguageCode>> written = CodeLists.Languages(row, key);
        foreach (Written<LanguageCode> language in written.Where(l => !known.Contains(l.Code.Text)))
        {
            row.Problems.Add(
                language.Place,
                $"There are no texts in the language '{language.Code}', and 'withoutTexts' does not say why.",
                Suggestion.DidYouMean(language.Code, known)
            );
        }

        return [.. written.Select(l => l.Code)];
    }

    private static (Dictionary<string, string> Because, List<Written<LanguageCode>> Written) ReadWithoutTexts(Fields fields)
    {
        var without = new Dictionary<string, string>();
        var written = new List<Written<LanguageCode>>();
        foreach (Fields row in fields.Groups("withoutTexts"))
        {
            string because = row.Text("because", "a reason");
            foreach (Written<LanguageCode> language in CodeLists.Languages(row, "languages"))
            {
                without[language.Code.Text] = because;
                written.Add(language);
            }

            row.Done();
        }

        return (without, written);
    }
}
