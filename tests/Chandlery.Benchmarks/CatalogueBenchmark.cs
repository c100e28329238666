using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Benchmarks;

/// <summary>Makes a folder with many candles of the demo's kind, then reads and assesses all of it.</summary>
internal static partial class CatalogueBenchmark
{
    /// <summary>Writes the folder.</summary>
    /// <param name="demo">Where its candles are copied from.</param>
    /// <param name="count">How many candles.</param>
    /// <param name="folder">Where they go.</param>
    /// <param name="noneAlike">Whether each candle whose load is a percentage gets one that no other has, and so a recipe of its own.</param>
    public static void Make(string demo, int count, string folder, bool noneAlike)
    {
        foreach (
            string file in Directory
                .GetFiles(demo, "*.yaml", SearchOption.AllDirectories)
                .Where(f => !f.Contains("candles", StringComparison.Ordinal) && !f.Contains("batches", StringComparison.Ordinal))
        )
        {
            string copy = Path.Combine(folder, Path.GetRelativePath(demo, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy, overwrite: true);
        }

        string[] texts =
        [
            .. Directory.GetFiles(Path.Combine(demo, "candles"), "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText),
        ];
        Directory.CreateDirectory(Path.Combine(folder, "candles"));
        for (int i = 0; i < count; i++)
        {
            string load = (4 + (i % 60 / 10.0)).ToString(CultureInfo.InvariantCulture);
            string text = texts[i % texts.Length].Replace("load: { percent: 8,", $"load: {{ percent: {load},", StringComparison.Ordinal);
            if (noneAlike)
            {
                text = LoadPercent().Replace(text, m => Less(m.Value, i));
            }

            // Another composition, so another number.
            text = FormulationNumber().Replace(text, $"formulationNumber: {i + 1}");
            File.WriteAllText(Path.Combine(folder, "candles", $"candle-{i}.yaml"), text);
        }
    }

    private static string Less(string percent, int millionths) =>
        (decimal.Parse(percent, CultureInfo.InvariantCulture) * (1 - (millionths / 1_000_000m))).ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex("(?<=^load: \\{ percent: )[0-9.]+", RegexOptions.Multiline)]
    private static partial Regex LoadPercent();

    [GeneratedRegex("^formulationNumber: [0-9]+", RegexOptions.Multiline)]
    private static partial Regex FormulationNumber();

    /// <summary>Reads and assesses it; prints the parts' times and the peak of memory.</summary>
    public static void Run(string folder)
    {
        var watch = Stopwatch.StartNew();
        var problems = new Problems();
        Lawbook lawbook = LawReader.Read(ShippedFiles.Data(null, problems), PaperList.Own.Ids, problems)!;
        double law = watch.Elapsed.TotalSeconds;
        DeclarationFolder read = DeclarationFolder.Open(folder, lawbook.Vocabulary);
        double reading = watch.Elapsed.TotalSeconds - law;
        IReadOnlyList<CatalogueEntry<CatalogueRow>> entries = CatalogueRun.Assess(
            read.Catalogue,
            lawbook,
            new DateOnly(2026, 11, 25),
            null,
            CatalogueRow.Of
        );
        CatalogueRow[] rows = [.. entries.SelectMany(e => e.Results)];
        watch.Stop();
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{rows.Length} candles: law {law:0.00} s, reading {reading:0.00} s, assessing {watch.Elapsed.TotalSeconds - law - reading:0.00} s, together {watch.Elapsed.TotalSeconds:0.00} s, peak {Process.GetCurrentProcess().PeakWorkingSet64 / 1_000_000} MB"
            )
        );
    }
}
