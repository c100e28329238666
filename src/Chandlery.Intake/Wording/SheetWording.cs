using System.Globalization;
using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Intake.Wording;

/// <summary>How sheets say things, in all languages that are read. One language's words never clash with another's in a way that matters.</summary>
internal sealed record SheetWording
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

    /// <summary>Words before a section's number.</summary>
    public required IReadOnlyList<string> SectionWords { get; init; }

    /// <summary>Titles by section number.</summary>
    public required IReadOnlyDictionary<int, IReadOnlyList<string>> SectionTitles { get; init; }

    /// <summary>Headings by kind of column.</summary>
    public required IReadOnlyDictionary<string, IReadOnlyList<string>> Columns { get; init; }

    /// <summary>Labels before values, by what they label.</summary>
    public required IReadOnlyDictionary<string, IReadOnlyList<string>> Labels { get; init; }

    /// <summary>Hazard classes written out, with their abbreviation.</summary>
    public required IReadOnlyDictionary<string, string> ClassNames { get; init; }

    /// <summary>Other lists of phrases by name.</summary>
    public required IReadOnlyDictionary<string, IReadOnlyList<string>> Lists { get; init; }

    /// <summary>Routes of exposure: oral, dermal, vapour, dust, gas.</summary>
    public required IReadOnlyDictionary<string, IReadOnlyList<string>> Routes { get; init; }

    /// <summary>Names of months, January first, a list for each language.</summary>
    public required IReadOnlyList<IReadOnlyList<string>> Months { get; init; }

    /// <summary>Words inside ranges, with the sign they stand for.</summary>
    public required IReadOnlyDictionary<string, string> RangeWords { get; init; }

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
        return new SheetWording
        {
            SectionWords = sections,
            SectionTitles = titles,
            Columns = columns,
            Labels = labels,
            ClassNames = classes,
            Lists = lists,
            Routes = routes,
            Months = months,
            RangeWords = rangeWords,
        };
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
