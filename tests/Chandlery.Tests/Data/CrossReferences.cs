using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Symbols;
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
        "about",
        "path",
    ];

    // In these files the name is what others refer to by, and must be one of those that are needed.
    private static bool IsOwn(string file, string field) => OwnTexts.Contains(field) && (file, field) != ("symbols.yaml", "name");

    // Words of suppliers' sheets and of citations may happen to be a language's code; of a supplier's, only classes and the language are
    // references.
    private static bool IsSheetWord(string file, string path) =>
        path.StartsWith("/cited/", StringComparison.Ordinal)
        || (IsWording(file) && path != "/language" && !path.StartsWith("/classNames/", StringComparison.Ordinal));

    private static bool IsWording(string file) => file.EndsWith("/supplier.yaml", StringComparison.Ordinal);

    // Fields whose keys are texts of their own, not field names of a reader. That each sentence of "told" is said somewhere is held by
    // SheetLanguageTests, for only the source knows what the program says.
    private static readonly string[] FreeKeys = ["headings", "citedHere", "classNames", "rangeWords", "told", "cited"];

    // The vocabulary's own file defines classes and groups; what refers to them is mangled elsewhere.
    // Risks and duties are named by whoever lists them.
    private static bool IsDefinition(string file, string field) =>
        (file == "law/hazards.yaml" && field is ("class" or "group"))
        || (field == "id" && (file == "technical-file/risks.yaml" || file.EndsWith("/duties.yaml", StringComparison.Ordinal)));

    private readonly HashSet<string> known =
    [
        .. lawbook.FindLanguage("en")!.Official.Keys.Concat(lawbook.FindLanguage("en")!.Printed.Keys).Select(s => s.Text),
        .. Pictogram.All.Select(p => p.Code),
        .. SignalWord.All.Select(w => w.Text),
        .. lawbook.Vocabulary.Categories.SelectMany(c => new[] { c.Code, c.ClassCode, c.Group }),
        .. lawbook.Editions.Select(e => e.Id),
        .. lawbook.Places.Select(p => p.Code.Text),
        .. lawbook.Places.SelectMany(p => p.Languages).Select(l => l.Text),
        .. PaperList.Own.Ids,
        .. SymbolName.Needed.Select(n => n.Text),
        .. LabelShape.Form.Choices,
        .. StockShape.Declares.Choices,
        "black",
        "white",
        "red",
        "grey",
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
            case YamlScalar scalar
                when known.Contains(IsWording(file) ? scalar.Text.Split('/')[0] : scalar.Text)
                    && !IsOwn(file, field)
                    && !IsSheetWord(file, path)
                    && !IsDefinition(file, field):
                yield return (path, new CrossReference(file, scalar.Text, scalar.Place));
                break;
        }
    }
}
