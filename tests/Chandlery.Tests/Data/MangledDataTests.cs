using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Intake.Wording;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Symbols;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Data;

/// <summary>
/// A mistyped letter in a law row must never silently drop a rule: every cross-reference in the data is mangled, one at a time,
/// and reading must refuse it, naming the place.
/// </summary>
public sealed partial class MangledDataTests
{
    private const string Stocks = "stocks/";

    private static readonly IReadOnlyDictionary<string, string> Shipped = ShippedFiles.Data(null, new Problems());

    // All files but one are the same each time: parsing them once makes thousands of readings possible.
    private static readonly Dictionary<string, ParsedFile> Parsed = Shipped
        .Where(f => f.Key.EndsWith(".yaml", StringComparison.Ordinal))
        .ToDictionary(f => f.Key, f => ParsedFile.Of(Shipped, f.Key));

    private static ParsedFile Parse(IReadOnlyDictionary<string, string> texts, string path) =>
        ReferenceEquals(Shipped[path], texts[path]) ? Parsed[path] : ParsedFile.Of(texts, path);

    // One language shows how a kind of file is read; that all have the same is held elsewhere.
    private static readonly string[] Languages =
    [
        "en/statements.yaml",
        "de/statements.yaml",
        "de/words.yaml",
        "de/kinds.yaml",
        "de/breaks.yaml",
        "de/product-safety.yaml",
        "de/authority.yaml",
        "de/procedure.yaml",
        "fr/safety-data-sheet.yaml",
    ];

    public static TheoryData<string> Files() =>
        [
            .. Shipped.Keys.Where(k =>
                k.EndsWith(".yaml", StringComparison.Ordinal)
                && (
                    !k.StartsWith("languages/", StringComparison.Ordinal)
                    || k.EndsWith("/supplier.yaml", StringComparison.Ordinal)
                    || Array.Exists(Languages, l => k == "languages/" + l)
                )
            ),
        ];

    [Fact]
    public void Every_kind_of_file_is_tried_in_a_language()
    {
        Assert.All(Languages, l => Assert.Contains("languages/" + l, Shipped.Keys));
        IEnumerable<string> kinds = Shipped.Keys.Where(k => k.StartsWith("languages/", StringComparison.Ordinal)).Select(Path.GetFileName)!;
        Assert.Equal(["supplier.yaml"], kinds.Distinct().Except(Languages.Select(Path.GetFileName))!);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_mangled_reference_is_refused_with_its_place(string file)
    {
        string text = Shipped[file];
        CrossReference[] references = [.. new CrossReferences(TestLaw.Lawbook).In(file, text)];
        Assert.NotEmpty(references);
        var wrong = new ConcurrentBag<string>();
        Parallel.ForEach(
            references,
            new ParallelOptions { MaxDegreeOfParallelism = 2 },
            reference =>
            {
                if (Complaint(reference, text) is { } complaint)
                {
                    wrong.Add(complaint);
                }
            }
        );
        Assert.True(wrong.IsEmpty, $"{wrong.Count} of {references.Length}:\n" + string.Join('\n', wrong.Take(40)));
    }

    // Another statement that there is passes for a class until something else does not fit it: that is told and is no fault.
    [Fact]
    public void A_class_with_another_known_statement_is_no_fault()
    {
        const string File = "law/hazards.yaml";
        string[] lines = Shipped[File].Split('\n');
        int[] classes = [.. Enumerable.Range(0, lines.Length).Where(i => lines[i].Contains("statement: H", StringComparison.Ordinal))];
        Assert.NotEmpty(classes);
        int refused = 0;
        foreach (int at in classes.Where((_, i) => i % 6 == 0))
        {
            string[] changed = [.. lines];
            changed[at] = Statement().Replace(lines[at], m => m.Value == "statement: H372" ? "statement: H332" : "statement: H372");
            var problems = new Problems();
            Lawbook? lawbook = LawReader.Read(
                new Dictionary<string, string>(Shipped.ToDictionary()) { [File] = string.Join('\n', changed) },
                PaperList.Own.Ids,
                problems,
                Parse
            );
            refused += lawbook is null ? 1 : 0;
            Assert.NotEqual(0, lawbook?.Substances.Table!.All().Sum(h => h.Versions.Count));
        }

        Assert.NotEqual(0, refused);
    }

    private static string? Complaint(CrossReference reference, string text)
    {
        var files = new Dictionary<string, string>(Shipped.ToDictionary())
        {
            [reference.File] = reference.Mangle(text, out string mangled),
        };
        string what = $"{reference.File}:{reference.Place.Line}:{reference.Place.Column}: '{reference.Text}' as '{mangled}'";
        var problems = new Problems();
        try
        {
            Read(reference.File, files, problems);
        }
        catch (Exception error)
        {
            return $"{what} ends as a fault: {error.GetType().Name}: {error.Message}";
        }

        if (problems.None)
        {
            return $"{what} passes";
        }

        return problems.Found.Any(p => p.Place.File == "data/" + reference.File && p.Place.Line > 0)
            ? null
            : $"{what} is refused elsewhere: {problems.Found[0]}";
    }

    // Each file is read by who reads it in the program.
    private static void Read(string file, Dictionary<string, string> files, Problems problems)
    {
        if (file == "symbols.yaml")
        {
            SymbolSheet.Read(files, problems);
        }
        else if (file.EndsWith("/supplier.yaml", StringComparison.Ordinal))
        {
            SheetWording.Read(TestLaw.Lawbook.Vocabulary, files, problems);
        }
        else if (file.StartsWith(Stocks, StringComparison.Ordinal))
        {
            StockReader.Read(files[file], "data/" + file, "stock", problems);
        }
        else
        {
            // Whoever reads the file refuses most slips; the whole law, which takes many times as long, is read for the others.
            LawReader.Read(files, PaperList.Own.Ids, problems, Parse, lawbook => AskForOwner(lawbook, file));
            if (problems.None)
            {
                LawReader.Read(files, PaperList.Own.Ids, problems, Parse);
            }
        }
    }

    private static void AskForOwner(Lawbook lawbook, string file)
    {
        switch (file.Split('/'))
        {
            case ["kinds", var kind]:
                _ = lawbook.Kinds.Find(Path.GetFileNameWithoutExtension(kind));
                break;
            case ["law", var edition, _]:
                _ = lawbook.Editions.Find(edition);
                break;
            case ["languages", var language, "safety-data-sheet.yaml"]:
                _ = lawbook.SheetWords.Find(language);
                break;
            case ["languages", var language, "product-safety.yaml"]:
                _ = lawbook.Safety.Words.Find(language);
                break;
            case ["languages", var language, "authority.yaml"]:
                _ = lawbook.Safety.AuthorityWords.Find(language);
                break;
            case ["languages", var language, "procedure.yaml"]:
                _ = lawbook.Safety.ProcedureWords.Find(language);
                break;
            case ["product-safety", var law, _]:
                _ = lawbook.Safety.Markets.Find(law);
                _ = lawbook.Safety.Listings.Find(law);
                _ = lawbook.Safety.Recalls.Find(law);
                _ = lawbook.Safety.Incidents.Find(law);
                _ = lawbook.Safety.Quantities.Find(law);
                _ = lawbook.Safety.Packagings.Find(law);
                _ = lawbook.Safety.Duties.Find(law);
                break;
            case ["substances", _]:
                _ = lawbook.Substances.Table;
                break;
            case ["technical-file", _]:
                _ = lawbook.Safety.File.Value;
                break;
            case ["languages", var language, _]:
                _ = lawbook.Languages.Find(language);
                break;
        }
    }

    [GeneratedRegex("statement: H[0-9A-Za-z]+")]
    private static partial Regex Statement();
}
