using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Yaml;

namespace Chandlery.Tests.Data;

/// <summary>Finds every cross-reference in the law's data files: field names, and texts that are a code or name of something known.</summary>
internal sealed class CrossReferences(Lawbook lawbook)
{
    // Free texts may happen to be a known word; these fields hold nothing else than their own texts.
    // What the table's classes begin with is no reference either: without it the table's own line is refused.
    private static readonly string[] OwnTexts =
    [
        "notComputed",
        "name",
        "plain",
        "group of texts",
        "why",
        "because",
        "says",
        "text",
        "printed",
        "caution",
    ];

    // Fields whose keys are texts of their own, not field names of a reader.
    private static readonly string[] FreeKeys = ["headings", "citedHere"];

    // The vocabulary's own file defines classes and groups; what refers to them is mangled elsewhere.
    private static bool IsDefinition(string file, string field) => file == "law/hazards.yaml" && field is ("class" or "group");

    private readonly HashSet<string> known =
    [
        .. lawbook.FindLanguage("en")!.Official.Keys.Concat(lawbook.FindLanguage("en")!.Printed.Keys).Select(s => s.Text),
        .. Pictogram.All.Select(p => p.Code),
        .. SignalWord.All.Select(w => w.Text),
        .. lawbook.Vocabulary.Categories.SelectMany(c => new[] { c.Code, c.ClassCode, c.Group }),
        .. lawbook.Editions.Select(e => e.Id),
        .. lawbook.Places.SelectMany(p => p.Languages),
        .. lawbook.Vocabulary.Categories.Select(c => $"{c.ClassCode} {c.Category}".Trim() + ", " + c.Statement),
    ];

    /// <summary>All of a file; one of each kind where many stand under the same fields.</summary>
    public IEnumerable<CrossReference> In(string file, string text)
    {
        var problems = new Problems();
        YamlMap map = YamlText.Read(text, file, problems)!;
        return Walk(file, map, "").DistinctBy(r => (r.Path, r.Reference.Text)).Select(r => r.Reference);
    }

    private IEnumerable<(string Path, CrossReference Reference)> Walk(string file, YamlValue value, string path)
    {
        string field = path[(path.LastIndexOf('/') + 1)..];
        switch (value)
        {
            case YamlMap map:
                foreach (YamlEntry entry in map.Entries)
                {
                    if (!FreeKeys.Contains(field))
                    {
                        yield return (path, new CrossReference(file, entry.Key, entry.KeyPlace));
                    }

                    foreach ((string, CrossReference) inner in Walk(file, entry.Value, $"{path}/{entry.Key}"))
                    {
                        yield return inner;
                    }
                }

                break;
            case YamlList list:
                foreach ((string, CrossReference) inner in list.Items.SelectMany(i => Walk(file, i, path)))
                {
                    yield return inner;
                }

                break;
            case YamlScalar scalar when known.Contains(scalar.Text) && !OwnTexts.Contains(field) && !IsDefinition(file, field):
                yield return (path, new CrossReference(file, scalar.Text, scalar.Place));
                break;
        }
    }
}
