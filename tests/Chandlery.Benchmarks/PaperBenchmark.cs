using BenchmarkDotNet.Attributes;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Papers.LabelSheets;
using Chandlery.Paper.Papers.SafetyDataSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Benchmarks;

/// <summary>Documents of the demo's garden bowl, warm: fitting, drawing, the safety data sheet, reading the law.</summary>
[MemoryDiagnoser]
public class PaperBenchmark
{
    private readonly Problems problems = new();
    private Desk desk = null!;
    private PaperDocument label = null!;
    private Stock stock = null!;

    /// <summary>The demo candle that is measured.</summary>
    public static string Candle { get; set; } = "data/demo/candles/harbour-bowl.yaml";

    [GlobalSetup]
    public void Setup()
    {
        desk = Desk.Lay(Candle);
        stock = StockShelf.Find("a4-2x2", problems)!;
        label = new PaperDocument(
            "label",
            "en",
            LabelDocument.Make(desk.Assessment, desk.Shop, desk.Lawbook.Burning, problems)!.Fitted!.Pages
        );
    }

    [Benchmark]
    public Lawbook? ReadTheLaw() => LawReader.Read(desk.Data, PaperList.Own.Ids, new Problems());

    [Benchmark]
    public LabelAttempt? FitLabel() => LabelDocument.Make(desk.Assessment, desk.Shop, desk.Lawbook.Burning, problems);

    [Benchmark]
    public byte[] DrawLabelPdf() => PdfDrawing.Draw(label);

    /// <summary>A label fitted to a stock, and a sheet full of it as PDF.</summary>
    [Benchmark]
    public byte[] SheetOfLabelsPdf()
    {
        Assessment onStock = desk.Assessment with { Candle = desk.Assessment.Candle with { Label = stock.Label } };
        Scene fitted = LabelDocument.Make(onStock, desk.Shop, desk.Lawbook.Burning, problems)!.Fitted!.Scene;
        Scene[] labels = [.. Enumerable.Repeat(fitted, stock.Sheet!.Count)];
        return PdfDrawing.Draw(SheetDocument.Make("sheet", "en", labels, stock, new SheetOptions(1, false, default, default)));
    }

    [Benchmark]
    public byte[] SafetyDataSheetPdf() =>
        PdfDrawing.Draw(
            SafetySheetDocument.Make(
                SafetySheetMaker.Make(desk.Assessment, desk.Assessment.Languages[0], desk.Lawbook, 1, problems)!,
                desk.Shop,
                problems
            )!
        );
}
