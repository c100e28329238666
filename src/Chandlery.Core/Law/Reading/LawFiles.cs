using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>The law's data files as trees, each parsed once; a file that an edition lacks comes from the edition it is based on.</summary>
internal sealed class LawFiles
{
    private readonly IReadOnlyDictionary<string, string> texts;
    private readonly Problems problems;
    private readonly Func<IReadOnlyDictionary<string, string>, string, ParsedFile> parse;
    private readonly Dictionary<string, ParsedFile> parsed = [];

    /// <summary>Takes the files.</summary>
    /// <param name="texts">Texts by path relative to <c>data/</c>, with forward slashes.</param>
    /// <param name="problems">Collects everything that is wrong.</param>
    /// <param name="parse">How a file is parsed; whoever reads the same texts again and again may keep what was parsed.</param>
    public LawFiles(
        IReadOnlyDictionary<string, string> texts,
        Problems problems,
        Func<IReadOnlyDictionary<string, string>, string, ParsedFile> parse
    )
    {
        this.texts = texts;
        this.problems = problems;
        this.parse = parse;
    }

    /// <summary>All paths, in order.</summary>
    public IEnumerable<string> Paths => texts.Keys.Order(StringComparer.Ordinal);

    /// <summary>Names of all editions, in order.</summary>
    public IReadOnlyList<string> Editions { get; private set; } = [];

    /// <summary>The folders of a kind that hold a file, in order: languages with their statements, for one.</summary>
    /// <param name="kind">The folder of the kind, such as <c>languages</c>.</param>
    /// <param name="file">The file that makes a folder one of the kind.</param>
    public IReadOnlyList<string> Folders(string kind, string file) =>
        [.. Paths.Select(k => k.Split('/')).Where(p => p.Length == 3 && p[0] == kind && p[2] == file).Select(p => p[1])];

    /// <summary>Finds the editions; call first.</summary>
    public void FindEditions() => Editions = Folders("law", "edition.yaml");

    /// <summary>A file that is no YAML; a missing one is noted.</summary>
    public string Text(string path)
    {
        if (TextOrNull(path) is { } text)
        {
            return text;
        }

        problems.Add(new TextPlace("data/" + path, 0, 0), "The file is missing.", "Restore it from the program's own data.");
        return "";
    }

    /// <summary>A file that is no YAML, or null.</summary>
    public string? TextOrNull(string path) => texts.GetValueOrDefault(path);

    /// <summary>A file; a missing one is noted.</summary>
    public Fields Open(string path)
    {
        string name = "data/" + path;
        if (!texts.ContainsKey(path))
        {
            problems.Add(new TextPlace(name, 0, 0), "The file is missing.", "Restore it from the program's own data.");
            return new Fields(new YamlMap([], new TextPlace(name, 0, 0)), new Problems());
        }

        // A file that is no YAML has been noted; whatever it should have held is not noted as missing on top.
        ParsedFile file = Parse(path);
        return new Fields(file.Map, file.Problems.None ? problems : new Problems());
    }

    /// <summary>
    /// An edition's file, or that of the edition it is based on. What is taken over is cited as the edition's own law cites it
    /// (<c>citedHere</c>).
    /// </summary>
    public Fields OpenFor(string edition, string file)
    {
        var heirs = new List<string>();
        string folder = edition;
        while (!texts.ContainsKey($"law/{folder}/{file}") && BasedOn(folder) is { } above && heirs.Count < Editions.Count)
        {
            heirs.Add(folder);
            folder = above;
        }

        string path = $"law/{folder}/{file}";
        if (heirs.Count == 0 || !texts.ContainsKey(path))
        {
            return IsUnreadable(folder) ? new Fields(new YamlMap([], new TextPlace("data/" + path, 0, 0)), new Problems()) : Open(path);
        }

        YamlMap map = Parse(path).Map;
        foreach (string heir in Enumerable.Reverse(heirs))
        {
            List<(string From, string To)> cited =
            [
                .. Open($"law/{heir}/edition.yaml").Entries("citedHere").Select(e => (e.Key, (e.Value as YamlScalar)?.Text ?? "")),
            ];
            map = (YamlMap)CitedAs(map, cited);
        }

        return new Fields(map, problems);
    }

    // What an edition is based on is unknown when its own file cannot be read, or names another that there is not: that is noted
    // there, and not with every file that is missing for it.
    private bool IsUnreadable(string edition) =>
        !texts.ContainsKey($"law/{edition}/edition.yaml") || !Parse($"law/{edition}/edition.yaml").Problems.None;

    private string? BasedOn(string edition) =>
        texts.ContainsKey($"law/{edition}/edition.yaml") ? Open($"law/{edition}/edition.yaml").OptionalText("basedOn") : null;

    private ParsedFile Parse(string path)
    {
        if (!parsed.TryGetValue(path, out ParsedFile? file))
        {
            file = parse(texts, path);
            parsed[path] = file;
            problems.AddRange(file.Problems.Found);
        }

        return file;
    }

    private static YamlValue CitedAs(YamlValue value, IReadOnlyList<(string From, string To)> cited) =>
        value switch
        {
            YamlScalar scalar => cited.Aggregate(
                scalar,
                (s, c) =>
                    s.Text.Contains(c.From, StringComparison.Ordinal)
                        ? s with
                        {
                            Text = s.Text.Replace(c.From, c.To, StringComparison.Ordinal),
                        }
                        : s
            ),
            YamlList list => list with { Items = [.. list.Items.Select(i => CitedAs(i, cited))] },
            YamlMap map => map with { Entries = [.. map.Entries.Select(e => e with { Value = CitedAs(e.Value, cited) })] },
            _ => value,
        };
}
