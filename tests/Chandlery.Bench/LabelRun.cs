using System.Diagnostics;
using System.Globalization;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Reading;
using Chandlery.Paper.Documents;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Symbols;
using Chandlery.Paper.Templates;
using Chandlery.Workshop;

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
        var problems = new Problems();
        IReadOnlyDictionary<string, string> data = ShippedFiles.Data(null, problems);
        Lawbook lawbook = LawReader.Read(data, problems)!;
        var shop = new PaperShop(new TemplateShelf(ShippedFiles.Templates(null, problems)), SymbolSheet.Read(data, problems));
        DeclarationFolder folder = DeclarationFolder.Open(candle, lawbook.Vocabulary);
        Assessment one = new Assessor(lawbook, folder.Catalogue, new DateOnly(2026, 11, 25)).Assess(folder.Asked[0], null, problems)[0];
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
                    return LabelDocument.Make(a, shop, lawbook.Burning, new Problems())!.Fitted!.Scene;
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
