using System.Globalization;
using Chandlery.Core.Hazards;
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
        "amendment",
        "amendmentNumber",
        "ifraCertificate",
        "allergenStatement",
    ];

    /// <summary>Reads the files under <c>data/languages/&lt;code&gt;/supplier.yaml</c>.</summary>
    /// <param name="vocabulary">Hazard classes, which written-out names stand for.</param>
    /// <param name="files">Texts by path relative to <c>data/</c>.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public static SheetWording Read(HazardVocabulary vocabulary, IReadOnlyDictionary<string, string> files, Problems problems)
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
            if (YamlText.Read(files, path, "data/" + path, problems) is not { } map)
            {
                continue;
            }

            var fields = new Fields(map, problems);
            var keys = new WordingKeys(fields, vocabulary);
            keys.CheckLanguage(path.Split('/')[1]);
            sections.AddRange(fields.Texts("section"));
            foreach ((string key, IReadOnlyList<string> texts) in keys.Group("sectionTitles", WordingKeys.Sections))
            {
                int number = int.Parse(key, CultureInfo.InvariantCulture);
                titles[number] = [.. titles.GetValueOrDefault(number) ?? [], .. texts];
            }

            AddTo(columns, keys.Group("columns", WordingKeys.Columns));
            AddTo(labels, keys.Group("labels", WordingKeys.Labels));
            AddTo(routes, keys.Group("routes", WordingKeys.Routes));
            AddTo(lists, ListNames.Select(name => (name, (IReadOnlyList<string>)[.. fields.Texts(name).Select(Phrase.Plain)])));
            months.Add(fields.Texts("months"));
            AddTo(classes, keys.ClassNames());
            AddTo(rangeWords, keys.RangeWords());
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
            if (YamlText.Read(files, path, "data/" + path, problems) is not { } map)
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

    private static void AddTo(Dictionary<string, IReadOnlyList<string>> all, IEnumerable<(string Key, IReadOnlyList<string> Texts)> more)
    {
        foreach ((string key, IReadOnlyList<string> texts) in more)
        {
            all[key] = [.. all.GetValueOrDefault(key) ?? [], .. texts];
        }
    }

    private static void AddTo(Dictionary<string, string> all, IEnumerable<(string Words, string Meaning)> more)
    {
        foreach ((string words, string meaning) in more)
        {
            all[words] = meaning;
        }
    }
}
