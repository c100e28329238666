using System.Globalization;
using Chandlery.Yaml;

namespace Chandlery.Intake.Wording;

/// <summary>How sheets say things, in all languages that are read. One language's words never clash with another's in a way that matters.</summary>
/// <param name="SectionWords">Words before a section's number.</param>
/// <param name="SectionTitles">Titles by section number.</param>
/// <param name="Columns">Headings by kind of column.</param>
/// <param name="Labels">Labels before values, by what they label.</param>
/// <param name="ClassNames">Hazard classes written out, with their abbreviation.</param>
/// <param name="Lists">Other lists of phrases by name.</param>
/// <param name="Routes">Routes of exposure: oral, dermal, vapour, dust, gas.</param>
/// <param name="Months">Names of months, January first, a list for each language.</param>
/// <param name="RangeWords">Words inside ranges, with the sign they stand for.</param>
internal sealed record SheetWording(
    IReadOnlyList<string> SectionWords,
    IReadOnlyDictionary<int, IReadOnlyList<string>> SectionTitles,
    IReadOnlyDictionary<string, IReadOnlyList<string>> Columns,
    IReadOnlyDictionary<string, IReadOnlyList<string>> Labels,
    IReadOnlyDictionary<string, string> ClassNames,
    IReadOnlyDictionary<string, IReadOnlyList<string>> Lists,
    IReadOnlyDictionary<string, IReadOnlyList<string>> Routes,
    IReadOnlyList<IReadOnlyList<string>> Months,
    IReadOnlyDictionary<string, string> RangeWords
)
{
    private static readonly string[] ListNames =
    [
        "categoryWords",
        "notClassified",
        "tableEnds",
        "closedCup",
        "openCup",
        "acute",
        "chronic",
        "notRestricted",
        "notPermitted",
        "notPresent",
        "category",
        "ifraCertificate",
        "allergenStatement",
    ];

    /// <summary>Reads the files under <c>data/languages/&lt;code&gt;/supplier.yaml</c>.</summary>
    /// <param name="files">Texts by path relative to <c>data/</c>.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public static SheetWording Read(IReadOnlyDictionary<string, string> files, Problems problems)
    {
        var sections = new List<string>();
        var titles = new Dictionary<int, IReadOnlyList<string>>();
        var columns = new Dictionary<string, IReadOnlyList<string>>();
        var labels = new Dictionary<string, IReadOnlyList<string>>();
        var classes = new Dictionary<string, string>();
        var lists = new Dictionary<string, IReadOnlyList<string>>();
        var routes = new Dictionary<string, IReadOnlyList<string>>();
        var months = new List<IReadOnlyList<string>>();
        var rangeWords = new Dictionary<string, string>();
        foreach (
            string path in files
                .Keys.Where(k =>
                    k.StartsWith("languages/", StringComparison.Ordinal) && k.EndsWith("/supplier.yaml", StringComparison.Ordinal)
                )
                .Order(StringComparer.Ordinal)
        )
        {
            if (YamlText.Read(files[path], "data/" + path, problems) is not { } map)
            {
                continue;
            }

            var fields = new Fields(map, problems);
            fields.OptionalText("language");
            sections.AddRange(fields.Texts("section"));
            foreach ((string key, IReadOnlyList<string> texts) in Group(fields, "sectionTitles"))
            {
                int number = int.Parse(key, CultureInfo.InvariantCulture);
                titles[number] = [.. titles.GetValueOrDefault(number) ?? [], .. texts];
            }

            AddTo(columns, Group(fields, "columns"));
            AddTo(labels, Group(fields, "labels"));
            AddTo(routes, Group(fields, "routes"));
            AddTo(lists, ListNames.Select(name => (name, (IReadOnlyList<string>)[.. fields.Texts(name).Select(Phrase.Plain)])));
            months.Add(fields.Texts("months"));
            AddPairs(classes, fields, "classNames");
            AddPairs(rangeWords, fields, "rangeWords");
            fields.Done();
        }

        AddTitlesOfLaw(files, titles, problems);
        return new SheetWording(sections, titles, columns, labels, classes, lists, routes, months, rangeWords);
    }

    // The law's own titles, which our safety data sheets print, in every language there is.
    private static void AddTitlesOfLaw(
        IReadOnlyDictionary<string, string> files,
        Dictionary<int, IReadOnlyList<string>> titles,
        Problems problems
    )
    {
        foreach (
            string path in files
                .Keys.Where(k =>
                    k.StartsWith("languages/", StringComparison.Ordinal) && k.EndsWith("/safety-data-sheet.yaml", StringComparison.Ordinal)
                )
                .Order(StringComparer.Ordinal)
        )
        {
            if (YamlText.Read(files[path], "data/" + path, problems) is not { } map)
            {
                continue;
            }

            foreach (YamlEntry entry in new Fields(map, problems).Entries("headings"))
            {
                if (
                    int.TryParse(entry.Key, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
                    && entry.Value is YamlScalar title
                )
                {
                    titles[number] = [.. titles.GetValueOrDefault(number) ?? [], Phrase.Plain(title.Text)];
                }
            }
        }
    }

    private static IEnumerable<(string Key, IReadOnlyList<string> Texts)> Group(Fields fields, string key)
    {
        foreach (YamlEntry entry in fields.Entries(key))
        {
            IEnumerable<YamlValue> items = entry.Value is YamlList list ? list.Items : [entry.Value];
            yield return (entry.Key, [.. items.OfType<YamlScalar>().Select(s => Phrase.Plain(s.Text))]);
        }
    }

    private static void AddTo(Dictionary<string, IReadOnlyList<string>> all, IEnumerable<(string Key, IReadOnlyList<string> Texts)> more)
    {
        foreach ((string key, IReadOnlyList<string> texts) in more)
        {
            all[key] = [.. all.GetValueOrDefault(key) ?? [], .. texts];
        }
    }

    private static void AddPairs(Dictionary<string, string> all, Fields fields, string key)
    {
        foreach (YamlEntry entry in fields.Entries(key))
        {
            all[entry.Key] = (entry.Value as YamlScalar)?.Text ?? "";
        }
    }
}
