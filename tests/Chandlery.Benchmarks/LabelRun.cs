using System.Diagnostics;
using System.Globalization;
using Chandlery.Core.Assessed;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Benchmarks;

/// <summary>Many different labels in one run, fitted and drawn into one PDF; prints labels per second and peak memory.</summary>
internal static class LabelRun
{
    private const double PictureDotsPerInch = 300;

    /// <summary>Writes one label, and its pictograms and symbols alone, for other programs to lay out.</summary>
    /// <param name="candle">A candle's file.</param>
    /// <param name="folder">Receives <c>label.pdf</c>, <c>drawing.pdf</c> and <c>drawing.png</c>.</param>
    public static void WriteKit(string candle, string folder)
    {
        Desk desk = Desk.Lay(candle);
        Scene label = LabelDocument.Make(desk.Assessment, desk.Shop, desk.Lawbook.Burning, new Problems())!.Fitted!.Scene;
        Scene drawing = label with { Items = [.. label.All.OfType<PathItem>()] };
        Directory.CreateDirectory(folder);
        File.WriteAllBytes(Path.Combine(folder, "label.pdf"), PdfDrawing.Draw(new PaperDocument("label", "en", [label])));
        File.WriteAllBytes(Path.Combine(folder, "drawing.pdf"), PdfDrawing.Draw(new PaperDocument("drawing", "en", [drawing])));
        File.WriteAllBytes(Path.Combine(folder, "drawing.png"), PngDrawing.Draw(drawing, PictureDotsPerInch));
    }

    /// <summary>Runs it.</summary>
    /// <param name="candle">A candle's file.</param>
    /// <param name="count">How many labels.</param>
    /// <param name="output">The PDF to write.</param>
    public static void Run(string candle, int count, string output)
    {
        Desk desk = Desk.Lay(candle);
        Assessment one = desk.Assessment;
        var watch = Stopwatch.StartNew();
        Scene[] scenes =
        [
            .. Enumerable
                .Range(1, count)
                .AsParallel()
                .AsOrdered()
                .Select(i =>
                {
                    Assessment a = one with { Candle = one.Candle with { Name = $"{one.Candle.Name} {i}", BatchCode = $"B-{i:00000}" } };
                    return LabelDocument.Make(a, desk.Shop, desk.Lawbook.Burning, new Problems())!.Fitted!.Scene;
                }),
        ];
        TimeSpan fitted = watch.Elapsed;
        byte[] pdf = PdfDrawing.Draw(new PaperDocument("labels", "en", scenes));
        watch.Stop();
        File.WriteAllBytes(output, pdf);
        double perSecond = count / watch.Elapsed.TotalSeconds;
        long peak = Process.GetCurrentProcess().PeakWorkingSet64 / 1_000_000;
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{count} labels: fitted in {fitted.TotalSeconds:0.00} s, with the PDF {watch.Elapsed.TotalSeconds:0.00} s, {perSecond:0} labels/s, peak {peak} MB, {pdf.Length / 1000} kB"
            )
        );
    }
}
