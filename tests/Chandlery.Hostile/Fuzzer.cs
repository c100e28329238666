using System.Diagnostics;
using System.Text;
using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.BurnCards;
using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Papers.PocketCards;
using Chandlery.Paper.Papers.ShopCards;
using Chandlery.Paper.Symbols;
using Chandlery.Paper.Templates;
using Chandlery.Workbench.Desks;
using Chandlery.Workbench.Forms;
using Chandlery.Yaml;

namespace Chandlery.Hostile;

/// <summary>Feeds bent input to every reader. Nothing may throw what a user would see as a crash, and nothing may yield a number that is none.</summary>
public sealed class Fuzzer
{
    private const int SlowestMilliseconds = 15_000;
    private static readonly string[] Sheets = ["dune.own-lines-en.pdf", "dune.latex-grid-de.pdf", "dune.ifra-en.pdf"];
    private static readonly DateOnly Day = new(2026, 11, 25);
    private readonly Lawbook lawbook;
    private readonly IReadOnlyDictionary<string, string> data;
    private readonly IReadOnlyDictionary<string, string> templates;
    private readonly SymbolSheet symbols;
    private readonly List<(string File, string Id, string Text)> declarations = [];
    private readonly Catalogue catalogue;
    private readonly Assessment assessment;
    private readonly List<byte[]> pdfs;
    private readonly HazardText hazards;
    private readonly SheetWording wording;
    private readonly DraftMaker drafts;
    private readonly string candles;

    public Fuzzer()
    {
        var problems = new Problems();
        data = ShippedFiles.Data(null, problems);
        templates = ShippedFiles.Templates(null, problems);
        lawbook = LawReader.Read(data, PaperList.Own.Ids, problems)!;
        symbols = SymbolSheet.Read(data, problems);
        wording = SheetWording.Read(lawbook.Vocabulary, data, problems);
        hazards = new HazardText(lawbook.Vocabulary, wording);
        drafts = DraftMaker.Of(data, lawbook.Vocabulary, problems)!;
        foreach (string file in Directory.GetFiles(Repository.Demo, "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            declarations.Add((file, Path.GetFileNameWithoutExtension(file), File.ReadAllText(file)));
        }

        catalogue = DeclarationFolder.Open(Repository.Demo, lawbook.Vocabulary).Catalogue;
        candles = CandleTable.Candles(catalogue.OfKind<Candle>(), commas: false, problems);
        assessment = new Assessor(lawbook, catalogue, Day).Assess(
            catalogue.OfKind<Candle>().First(c => c.Id == "harbour-bowl"),
            null,
            problems
        )[0];
        pdfs = [.. Sheets.Select(f => File.ReadAllBytes(Path.Combine(Repository.Sheets, f)))];
    }

    /// <summary>Kinds of input by name, each with its share of the cases out of a thousand.</summary>
    public static IReadOnlyDictionary<string, int> Kinds { get; } =
        new Dictionary<string, int>
        {
            ["declaration"] = 635,
            ["sheet text"] = 150,
            ["sheet page"] = 5,
            ["csv"] = 80,
            ["page edit"] = 110,
            ["template"] = 15,
            ["pdf"] = 5,
        };

    /// <summary>Runs a case; the result is empty, or what went wrong.</summary>
    public string Run(string kind, int seed)
    {
        try
        {
            var mangler = new Mangler(seed);
            switch (kind)
            {
                case "declaration":
                    return Declaration(mangler);
                case "sheet text":
                    return SheetText(mangler);
                case "sheet page":
                    Draft([1], [TypedPage.Of(mangler.Text(TypedPage.Sample))]);
                    return "";
                case "csv":
                    CandleTable.Read(mangler.Text(candles), "c.csv", lawbook, new Problems());
                    return "";
                case "page edit":
                    return PageEdit(mangler);
                case "template":
                    Template(mangler);
                    return "";
                default:
                    Pdf(mangler);
                    return "";
            }
        }
        catch (Exception error)
        {
            return $"{kind} {seed}: {error.GetType().Name}: {error.Message} {error.StackTrace?.Split('\n').FirstOrDefault(l => l.Contains("Chandlery", StringComparison.Ordinal))?.Trim()}";
        }
    }

    private string Declaration(Mangler mangler)
    {
        (string file, string id, string text) = mangler.Pick(declarations);
        var problems = new Problems();
        IDeclaration? read = new DeclarationReader(lawbook.Vocabulary).Read(mangler.Text(text), file, id, problems);
        if (read is null)
        {
            return problems.None ? "a declaration was refused without a word" : "";
        }

        List<IDeclaration> all = [.. catalogue.All.Where(d => d.Id != id || d.GetType() != read.GetType()), read];
        var bent = new Catalogue(all, problems);
        var assessor = new Assessor(lawbook, bent, Day);
        foreach (IDeclaration candle in all.Where(d => d is Candle or Batch).Take(2))
        {
            var own = new Problems();
            foreach (Assessment a in assessor.Assess(candle, null, own))
            {
                if (
                    a.Substances.Any(s =>
                        !double.IsFinite(s.Ingredient.High.Value) || s.Ingredient.High.Value < 0 || s.Ingredient.High.Value > 100 + 1e-6
                    )
                )
                {
                    return "a share is no share";
                }

                AssessmentJson.Write(a);
            }
        }

        return "";
    }

    private string SheetText(Mangler mangler)
    {
        string text = mangler.Text(
            "Skin Sens. 1B - H317; Aquatic Acute 1, H400 (M=1), Acute Tox. 4, H302, ATE (oral) = 500 mg/kg, C >= 0,01 %"
        );
        var clock = Stopwatch.StartNew();
        HazardReading read = hazards.Read(text);
        if (clock.ElapsedMilliseconds > SlowestMilliseconds)
        {
            return $"{clock.ElapsedMilliseconds} ms for '{text}'";
        }

        if (read.M is { } m && (m.Acute is <= 0 || m.Chronic is <= 0))
        {
            return $"an M-factor of nothing from '{text}'";
        }

        Chandlery.Intake.Wording.ShareText.Parse(mangler.Text(">= 2,5 - < 10 %"), wording);
        DateText.Find(mangler.Text("10. März 2026"), wording);
        return "";
    }

    private string PageEdit(Mangler mangler)
    {
        string json = mangler.Text(
            """{"id":"harbour-bowl","edits":[{"path":["name"],"value":"A"},{"path":["load"],"value":{"percent":"7,5","of":"wax"}},{"path":["oils",1,"share"],"value":"20"},{"path":["oils",4],"value":{"oil":"x","drops":"80"}},{"path":["extras"],"value":null},{"path":["temperatures","pourCelsius"],"value":null},{"path":["soldIn"],"value":["IE","DE"]},{"path":["topUp","scented"],"value":true}]}"""
        );
        DeskRequest? request;
        try
        {
            request = JsonSerializer.Deserialize<DeskRequest>(Encoding.UTF8.GetBytes(json), JsonSerializerOptions.Web);
        }
        catch (JsonException)
        {
            return "";
        }

        (string _, string _, string text) = declarations.Single(d => d.Id == "harbour-bowl");
        try
        {
            string edited = FieldEdits.Apply(text, request?.Edits);
            new DeclarationReader(lawbook.Vocabulary).Read(edited, "c.yaml", "c", new Problems());
        }
        catch (FormatException)
        {
            // What the page is told in words.
        }

        return "";
    }

    private void Template(Mangler mangler)
    {
        (string name, CardPaper card) = mangler.Pick<(string, CardPaper)>([
            ("burn-card-pocket.sbn", new PocketCardPaper()),
            ("shop-card.sbn", new ShopCardPaper()),
            ("burn-card.sbn", new BurnCardPaper()),
            ("parts/messages.sbn", new PocketCardPaper()),
        ]);
        var bent = new Dictionary<string, string>(templates) { [name] = mangler.Text(templates[name]) };
        var shop = new PaperShop(new TemplateShelf(bent), symbols);
        Wax wax = catalogue.Find<Wax>(assessment.Candle.Wax, new Problems())!;
        card.Make(new PaperRequest(assessment, assessment.Languages[0], wax, lawbook, shop, new PaperSettings()) { Catalogue = catalogue });
    }

    private void Pdf(Mangler mangler)
    {
        byte[] bent = mangler.Bytes(mangler.Pick(pdfs));
        if (PdfWords.Parse(bent).OrNull() is { } pages)
        {
            Draft(bent, pages);
        }
    }

    private void Draft(byte[] content, IReadOnlyList<SheetPage> pages)
    {
        OilDraft? draft = drafts.Make([new SupplierPdf("bent.pdf", content, pages)], new Problems());
        if (draft is not null)
        {
            DraftYaml.Write(draft);
        }
    }
}
