using System.Diagnostics;
using System.Globalization;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Paper.Documents;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;

namespace Chandlery.Bench;

/// <summary>Many different labels in one run, fitted and drawn into one PDF; prints labels per second and peak memory.</summary>
internal static class LabelRun
{
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
