using System.Collections.Concurrent;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Intake.Wording;
using Chandlery.Paper.Symbols;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Data;

/// <summary>
/// A mistyped letter in a law row must never silently drop a rule: every cross-reference in the data is mangled, one at a time,
/// and reading must refuse it, naming the place.
/// </summary>
public sealed class MangledDataTests
{
    private const string Stocks = "stocks/";

    private static readonly IReadOnlyDictionary<string, string> Shipped = ShippedFiles.Data(null, new Problems());

    // All files but one are the same each time: parsing them once makes thousands of readings possible.
    private static readonly Dictionary<string, ParsedFile> Parsed = Shipped
        .Where(f => f.Key.EndsWith(".yaml", StringComparison.Ordinal))
        .ToDictionary(f => f.Key, f => ParsedFile.Of(Shipped, f.Key));

    private static ParsedFile Parse(IReadOnlyDictionary<string, string> texts, string path) =>
        ReferenceEquals(Shipped[path], texts[path]) ? Parsed[path] : ParsedFile.Of(texts, path);

    public static TheoryData<string> Files() =>
        [
            .. Shipped.Keys.Where(k =>
                k.StartsWith("law/", StringComparison.Ordinal)
                || k.StartsWith("product-safety/", StringComparison.Ordinal)
                || k is "places.yaml" or "burning.yaml" or "substances/list.yaml" or "substances/annex-vi.yaml"
                || k is "languages/en/statements.yaml" or "languages/de/statements.yaml" or "languages/de/words.yaml"
                || k is "safety-data-sheet/advice.yaml" or "languages/fr/safety-data-sheet.yaml"
                || k is "symbols.yaml"
                || k.EndsWith("/supplier.yaml", StringComparison.Ordinal)
                || k.StartsWith(Stocks, StringComparison.Ordinal)
                || k is "languages/de/product-safety.yaml" or "technical-file/risks.yaml"
            ),
        ];

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
            LawReader.Read(files, problems, Parse, lawbook => AskForOwner(lawbook, file));
            if (problems.None)
            {
                LawReader.Read(files, problems, Parse);
            }
        }
    }

    private static void AskForOwner(Lawbook lawbook, string file)
    {
        switch (file.Split('/'))
        {
            case ["law", var edition, _]:
                _ = lawbook.Editions.Find(edition);
                break;
            case ["languages", var language, "safety-data-sheet.yaml"]:
                _ = lawbook.SheetWords.Find(language);
                break;
            case ["languages", var language, "product-safety.yaml"]:
                _ = lawbook.Safety.Words.Find(language);
                break;
            case ["languages", var language, _]:
                _ = lawbook.Languages.Find(language);
                break;
        }
    }
}
