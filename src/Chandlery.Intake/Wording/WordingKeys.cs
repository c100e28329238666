using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Intake.Wording;

/// <summary>
/// Reads the parts of a language's wording that refer to what the reader of sheets knows by name, so that no mistyped letter silently
/// loses a heading or a hazard class.
/// </summary>
/// <param name="fields">The file.</param>
/// <param name="vocabulary">Hazard classes.</param>
internal sealed class WordingKeys(Fields fields, HazardVocabulary vocabulary)
{
    /// <summary>What columns hold.</summary>
    public static readonly IReadOnlyList<string> Columns =
    [
        "name",
        "cas",
        "ec",
        "ignored",
        "share",
        "from",
        "to",
        "old",
        "classes",
        "statements",
        "limits",
        "m",
        "ate",
        "category",
    ];

    /// <summary>What labels stand before.</summary>
    public static readonly IReadOnlyList<string> Labels =
    [
        "name",
        "supplier",
        "document",
        "version",
        "revised",
        "issued",
        "otherDates",
        "flashPoint",
        "density",
        "casNumber",
        "ecNumber",
        "share",
        "classes",
        "substance",
        "limits",
        "m",
        "ate",
        "ignored",
    ];

    /// <summary>Routes of exposure.</summary>
    public static readonly IReadOnlyList<string> Routes = ["oral", "dermal", "vapour", "dust", "gas"];

    /// <summary>Sections of a safety data sheet.</summary>
    public static readonly IReadOnlyList<string> Sections =
    [
        "1",
        "2",
        "3",
        "4",
        "5",
        "6",
        "7",
        "8",
        "9",
        "10",
        "11",
        "12",
        "13",
        "14",
        "15",
        "16",
    ];

    private static readonly string[] RangeSigns = ["-", "<", "<=", ">", ">="];

    /// <summary>The language of the file must be that of its folder.</summary>
    public void CheckLanguage(string folder)
    {
        string code = fields.Text("language", folder);
        if (code != folder)
        {
            fields.Problems.Add(
                fields.PlaceOf("language"),
                $"The language '{code}' stands in the folder '{folder}'.",
                $"Write 'language: {folder}'."
            );
        }
    }

    /// <summary>Phrases by what they stand for; a key that stands for nothing is noted and left out.</summary>
    public IEnumerable<(string Key, IReadOnlyList<string> Texts)> Group(string field, IReadOnlyList<string> known)
    {
        foreach (YamlEntry entry in fields.Entries(field))
        {
            if (IsKnown(entry.Key, entry.KeyPlace, field, known))
            {
                IEnumerable<YamlValue> items = entry.Value is YamlList list ? list.Items : [entry.Value];
                yield return (entry.Key, [.. items.OfType<YamlScalar>().Select(s => Phrase.Plain(s.Text))]);
            }
        }
    }

    /// <summary>Hazard classes written out, with their abbreviation.</summary>
    public IEnumerable<(string Words, string Meaning)> ClassNames()
    {
        string[] known = [.. vocabulary.Categories.Select(c => c.ClassCode).Distinct()];
        return Pairs("classNames", (text, place) => Parts(text).All(part => IsKnown(part, place, "classNames", known)));
    }

    /// <summary>Words inside ranges, with the sign they stand for.</summary>
    public IEnumerable<(string Words, string Meaning)> RangeWords() =>
        Pairs("rangeWords", (text, place) => IsKnown(text, place, "rangeWords", RangeSigns));

    // "Eye Dam./Irrit." are two classes of one word.
    private static IEnumerable<string> Parts(string text)
    {
        string[] parts = text.Split('/');
        string first = parts[0].Split(' ')[0];
        return parts.Skip(1).Select(p => $"{first} {p}").Prepend(parts[0]);
    }

    private IEnumerable<(string Words, string Meaning)> Pairs(string field, Func<string, TextPlace, bool> isKnown)
    {
        foreach (YamlEntry entry in fields.Entries(field))
        {
            string text = (entry.Value as YamlScalar)?.Text ?? "";
            if (isKnown(text, entry.Value.Place))
            {
                yield return (entry.Key, text);
            }
        }
    }

    private bool IsKnown(string text, TextPlace place, string field, IReadOnlyList<string> known)
    {
        if (known.Contains(text))
        {
            return true;
        }

        string near = Suggestion.Nearest(text, known) is { } guess
            ? $"Did you mean '{guess}'?"
            : $"Write one of: {string.Join(", ", known)}.";
        fields.Problems.Add(place, $"'{text}' is not known in '{field}'.", near);
        return false;
    }
}
