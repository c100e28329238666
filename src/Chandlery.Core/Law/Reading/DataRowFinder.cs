using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>
/// Finds every row of the data that cites a clause, says how it was checked, or owns to be from memory, whatever kind of file it
/// stands in: so no row can be forgotten by a reader that does not keep what it says. A remark that owns to it counts as a row, too.
/// </summary>
public static class DataRowFinder
{
    private const string Memory = "from memory";
    private const string Confidence = "confidence";
    private const string Cases = "/cases.yaml";

    private static readonly string[] Names = ["code", "group", "id", "key", "statement", "feature", "parts", "term", "name", "label", "in"];

    // The whole file's word on its texts, where a file has one.
    private static readonly string[] WholeFile = [Confidence, "checked"];

    /// <summary>The rows of all files, in the order of the files.</summary>
    /// <param name="texts">Texts by path relative to <c>data/</c>, with forward slashes; they have been read as law before.</param>
    public static IReadOnlyList<DataRow> Find(IReadOnlyDictionary<string, string> texts)
    {
        var rows = new List<DataRow>();
        foreach (string path in texts.Keys.Where(p => !p.EndsWith(Cases, StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            string[] parts = path.Split('/');
            bool isLaw = parts is ["law" or "product-safety", _, _];
            string folder =
                parts is ["product-safety", _, _] ? $"{parts[0]}/{parts[1]}"
                : parts.Length == 3 ? parts[1]
                : parts[0];
            Walk(ParsedFile.Of(texts, path).Map, path, "", Add);
            Remarks(path, texts[path], Add);

            void Add(TextPlace place, string name, Standing standing, string says) =>
                rows.Add(new DataRow(folder, isLaw, place, name, standing, says));
        }

        return rows;
    }

    private static void Walk(YamlMap map, string name, string inherited, Action<TextPlace, string, Standing, string> found)
    {
        string own = TextOf(map, WholeFile) ?? inherited;
        List<string> memories =
        [
            .. map
                .Entries.Select(e => e.Value)
                .OfType<YamlScalar>()
                .Concat(map.Entries.Select(e => e.Value).OfType<YamlList>().SelectMany(l => l.Items).OfType<YamlScalar>())
                .Select(s => s.Text)
                .Where(t => t.Contains(Memory, StringComparison.OrdinalIgnoreCase)),
        ];
        if (memories.Count > 0)
        {
            found(map.Place, name, Standing.FromMemory, string.Join(" | ", memories));
        }
        else if (map.Entries.Any(e => e.Key is "clause" or Confidence))
        {
            bool isMemory = own.Contains(Memory, StringComparison.OrdinalIgnoreCase);
            found(
                map.Place,
                name,
                isMemory ? Standing.FromMemory
                    : own.Length > 0 ? Standing.Checked
                    : Standing.NotSaid,
                own
            );
        }

        foreach (YamlEntry entry in map.Entries)
        {
            switch (entry.Value)
            {
                case YamlMap below:
                    Walk(below, Called(below, entry.Key), own, found);
                    break;
                case YamlList list:
                    foreach (YamlMap item in list.Items.OfType<YamlMap>())
                    {
                        Walk(item, Called(item, entry.Key), own, found);
                    }

                    break;
                default:
                    break;
            }
        }
    }

    // What only a remark of the file owns to: it speaks of what stands behind it.
    private static void Remarks(string path, string text, Action<TextPlace, string, Standing, string> found)
    {
        string[] lines = [.. text.ReplaceLineEndings("\n").Split('\n').Select(l => l.Trim())];
        for (int from = 0; from < lines.Length; from++)
        {
            int until = from;
            while (until < lines.Length && lines[until].StartsWith('#'))
            {
                until++;
            }

            string says = string.Join(' ', lines[from..until].Select(l => l.TrimStart('#').Trim()));
            if (says.Contains(Memory, StringComparison.OrdinalIgnoreCase))
            {
                string behind = until < lines.Length ? lines[until].Trim('-', ' ', ':') : "";
                found(new TextPlace("data/" + path, from + 1, 1), $"remark before {behind.Split(" #")[0]}", Standing.FromMemory, says);
            }

            from = Math.Max(from, until - 1);
        }
    }

    private static string Called(YamlMap map, string key) =>
        TextOf(map, Names) is { } name ? $"{key}: {name}"
        : map.Entries.FirstOrDefault(e => e.Key is "hazards" or "all" or "result" or "hazard" or "names")?.Value is { } hazards
            ? $"{key}: {(hazards is YamlList list ? string.Join(", ", list.Items.OfType<YamlScalar>().Select(s => s.Text)) : (hazards as YamlScalar)?.Text)}"
        : key;

    private static string? TextOf(YamlMap map, string[] keys) =>
        keys.Select(k => map.Entries.FirstOrDefault(e => e.Key == k)?.Value).OfType<YamlScalar>().Select(s => s.Text).FirstOrDefault();
}
