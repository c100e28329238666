using System.CommandLine;
using Chandlery.Core.Assessed;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Making;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.BenchSheets;
using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Papers.PoisonCentres;
using Chandlery.Paper.Papers.SafetyDataSheets;
using Chandlery.Paper.Proofs;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Cli.Commands;

/// <summary>Makes documents and writes them in the formats asked for.</summary>
internal sealed class Printer(PaperShop shop, BurnAdvice advice, string folder, IReadOnlyList<string> formats, double dotsPerInch)
{
    /// <summary>A printer set up from the command line.</summary>
    public static Printer Open(
        ParseResult parse,
        PaperOptions paper,
        IReadOnlyDictionary<string, string> data,
        BurnAdvice advice,
        Problems problems
    ) =>
        new(
            ShippedShop.Open(data, parse.GetValue(paper.Templates), problems),
            advice,
            parse.GetValue(paper.Out) ?? ".",
            parse.GetValue(paper.Formats) ?? ["pdf"],
            parse.GetValue(paper.Resolution)
        );

    /// <summary>Files that a label makes, with its proof page when one is asked for, or the reason why there is none.</summary>
    public (IReadOnlyList<PendingFile> Files, string? WhyNot) Label(Assessment a, Problems problems, bool withProof = false)
    {
        (LabelResult? result, string? whyNot) = Fit(a, problems);
        if (result?.Fitted is not { } label)
        {
            return ([], whyNot);
        }

        var document = new PaperDocument(a.Candle.Name, a.Languages[0].Code, label.Pages);
        return ([.. Files(a.Id + "-label", document), .. withProof ? Proof(a, document, result.LeftOff) : []], null);
    }

    /// <summary>The label, or the reason why there is none.</summary>
    public (LabelResult? Result, string? WhyNot) Fit(Assessment a, Problems problems)
    {
        if (a.StopsSale)
        {
            return (null, $"{a.Id}: no label, because something stops the sale (see 'assess').");
        }

        LabelResult? result = LabelDocument.Make(a, shop, advice, problems);
        return result?.Misfit is { } misfit
            ? (
                null,
                $"{a.Id}: the text does not fit a label of {misfit.Shape.Request}: {Missing(misfit)}What would help: {string.Join("; ", misfit.Remedies)}."
            )
            : (result, null);
    }

    private static IEnumerable<PendingFile> Proof(Assessment a, PaperDocument label, IReadOnlyList<StatementChoice> leftOff)
    {
        IReadOnlyList<Inspection> checks = LabelInspector.Inspect(
            MeasuredPage.ReadAll(PdfDrawing.Draw(label)),
            a,
            leftOff.Select(l => l.Code.Text).ToHashSet()
        );
        return label.Pages.Select(
            (page, i) =>
                new PendingFile(
                    $"{a.Id}-proof{(label.Pages.Count > 1 ? $"-{i + 1}" : "")}.pdf",
                    PdfDrawing.Draw(new PaperDocument($"Proof: {a.Candle.Name}", "en", [ProofPage.Draw(a, page, checks)]))
                )
        );
    }

    /// <summary>How every arrangement that the vessel can carry fares.</summary>
    public IReadOnlyList<ArrangementResult>? Arrange(Assessment a, Problems problems) => LabelDocument.Arrange(a, shop, advice, problems);

    /// <summary>Files that a card makes.</summary>
    public IReadOnlyList<PendingFile> Card(Assessment a, CardKind kind, Problems problems) =>
        CardDocument.Make(a, kind, shop, advice, problems) is { } card ? Files($"{a.Id}-{NameOf(kind)}", card) : [];

    private static string NameOf(CardKind kind) =>
        kind switch
        {
            CardKind.Buyer => "burn-card",
            CardKind.Pocket => "pocket-card",
            _ => "shop-card",
        };

    /// <summary>The facts for the poison centres; nothing where no UFI is needed.</summary>
    public IReadOnlyList<PendingFile> PoisonFacts(Assessment a, Problems problems) =>
        a.Ufi is not null && PoisonFactsDocument.Make(a, shop, problems) is { } page
            ? [new PendingFile(a.Id + "-poison-facts.pdf", PdfDrawing.Draw(page))]
            : [];

    /// <summary>Files that a bench sheet makes.</summary>
    public IReadOnlyList<PendingFile> BenchSheet(Assessment a, PouringPlan plan, Problems problems) =>
        BenchSheetDocument.Make(a, plan, shop, problems) is { } sheet ? Files(a.Id + "-bench-sheet", sheet) : [];

    /// <summary>Files that a candle's safety data sheet and product information make, one for each language of the label.</summary>
    /// <param name="a">The candle.</param>
    /// <param name="lawbook">Law and words.</param>
    /// <param name="revision">Number of the revision.</param>
    /// <param name="warn">Receives what keeps a sheet from being lawful as it stands.</param>
    /// <param name="problems">Collects what is wrong.</param>
    /// <param name="pdfOnly">Leaves out pictures of the pages, whatever formats were asked for.</param>
    public IReadOnlyList<PendingFile> SafetySheets(
        Assessment a,
        Lawbook lawbook,
        int revision,
        Action<string> warn,
        Problems problems,
        bool pdfOnly = false
    )
    {
        var files = new List<PendingFile>();
        foreach (Language language in a.Languages)
        {
            if (SafetySheetMaker.Make(a, language, lawbook, revision, problems) is not { } sheet)
            {
                return [];
            }

            foreach (string warning in sheet.Warnings)
            {
                warn($"{a.Id}, safety data sheet in {language.Name}: {warning}");
            }

            string name = a.Languages.Count == 1 ? a.Id : $"{a.Id}-{language.Code}";
            files.AddRange(SafetySheetDocument.Make(sheet, shop, problems) is { } full ? Files($"{name}-safety-sheet", full, pdfOnly) : []);
            files.AddRange(
                SafetySheetDocument.ProductInformation(sheet, shop, problems) is { } page
                    ? Files($"{name}-product-information", page, pdfOnly)
                    : []
            );
        }

        return files;
    }

    /// <summary>Writes files into the folder.</summary>
    public void Write(IEnumerable<PendingFile> files, string subfolder, TextWriter output)
    {
        foreach (PendingFile file in files)
        {
            string path = Path.Combine(folder, subfolder, file.Name);
            AtomicFile.Write(path, file.Content);
            output.WriteLine(path);
        }
    }

    private static string Missing(Misfit misfit)
    {
        var parts = new List<string>();
        if (misfit.MissingHeight.Value > 0)
        {
            parts.Add($"{misfit.MissingHeight} of height");
        }

        if (misfit.MissingWidth.Value > 0)
        {
            parts.Add($"{misfit.MissingWidth} of width");
        }

        return parts.Count == 0 ? "" : $"{string.Join(" and ", parts)} missing at the smallest lawful text. ";
    }

    // Drawing is the slow part and every file is on its own, so all cores draw.
    private List<PendingFile> Files(string name, PaperDocument document, bool pdfOnly = false)
    {
        var work = new List<(string File, Func<byte[]> Draw)>();
        if (pdfOnly || formats.Contains("pdf"))
        {
            work.Add((name + ".pdf", () => PdfDrawing.Draw(document)));
        }

        for (int i = 0; i < document.Pages.Count && !pdfOnly; i++)
        {
            Scene scene = document.Pages[i];
            string page = document.Pages.Count == 1 ? name : $"{name}-{i + 1}";
            if (formats.Contains("png"))
            {
                work.Add((page + ".png", () => PngDrawing.Draw(scene, dotsPerInch)));
            }

            if (formats.Contains("svg"))
            {
                work.Add((page + ".svg", () => System.Text.Encoding.UTF8.GetBytes(SvgDrawing.Draw(scene, document.Title))));
            }
        }

        return [.. work.AsParallel().AsOrdered().Select(w => new PendingFile(w.File, w.Draw()))];
    }
}
