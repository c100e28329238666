using System.Data.Common;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Chandlery.Core.Assessed;
using Chandlery.Files;
using Chandlery.Register;
using Chandlery.Yaml;

namespace Chandlery.Benchmarks;

/// <summary>A register of many entries: made once, then asked and checked.</summary>
internal static class RegisterRun
{
    private const int Rounds = 9;
    private const int AtOnce = 2000;
    private const int Names = 2000;
    private const int Oils = 400;

    /// <summary>Makes a register: entries as the program makes them, with batches, oils and substances of their own.</summary>
    /// <param name="candle">A candle's file.</param>
    /// <param name="count">How many entries.</param>
    /// <param name="file">The register.</param>
    /// <param name="areSmall">Whether entries are made without the assessment's result, so that a million find room.</param>
    public static void Make(string candle, int count, string file, bool areSmall)
    {
        RegisterContent one = Content(candle, out IReadOnlyDictionary<string, string> texts);
        one = areSmall ? one with { Result = "{}" } : one;
        var watch = Stopwatch.StartNew();
        using (RegisterBook book = RegisterFile.Open(file))
        {
            if (book.Head().Number >= count)
            {
                Console.WriteLine("the file has as many entries already");
                return;
            }

            // Rows first and indexes over all of them at the end: a tenth of the time. Nobody will miss this file after a power cut.
            book.Store.Run("PRAGMA cache_size = -400000; PRAGMA synchronous = OFF; PRAGMA journal_mode = OFF;");
            foreach (
                string index in book.Store.Rows(
                    row => row.GetString(0),
                    "SELECT name FROM sqlite_schema WHERE type = 'index' AND sql IS NOT NULL"
                )
            )
            {
                book.Store.Run($"DROP INDEX {index}");
            }

            Fill(book, one, texts, count);
        }

        double filled = watch.Elapsed.TotalSeconds;
        using (RegisterBook book = RegisterFile.Open(file))
        {
            Witness.Write(Witness.FileOf(file), book.Head());
        }

        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{count} entries of {one.Substances.Count} substances made in {watch.Elapsed.TotalSeconds:0} s, {filled:0} s of it for rows, {new FileInfo(file).Length / 1e9:0.00} GB"
            )
        );
    }

    private static void Fill(RegisterBook book, RegisterContent one, IReadOnlyDictionary<string, string> texts, int count)
    {
        (long last, string previous) = book.Head();
        while (last < count)
        {
            using DbTransaction writing = book.Store.BeginAppending();
            for (long end = Math.Min(count, last + AtOnce); last < end; )
            {
                last++;
                RegisterContent content = Varied(one, last);
                string json = JsonSerializer.Serialize(content, RegisterJson.Default.RegisterContent);
                SignedEntry entry = SignedEntry.Sign(last, "2026-11-25T12:00:00Z", "M. Hale", json, previous);
                RegisterRows.Write(
                    book.Store,
                    [(entry, content)],
                    last == 1 ? texts : new Dictionary<string, string>(),
                    new Dictionary<string, byte[]>()
                );
                previous = entry.Hash;
            }

            writing.Commit();
        }
    }

    /// <summary>Asks it, and prints what each answer takes: opening, asking and reading, the middle of some rounds, the least and the most.</summary>
    /// <param name="file">The register: a file, or the connection string of a shared one.</param>
    public static void Measure(string file)
    {
        long last;
        using (RegisterBook book = RegisterPlace.Named(file).OpenToRead())
        {
            last = book.Head().Number;
        }

        string middle = (last / 2).ToString(CultureInfo.InvariantCulture);
        Time("one batch", file, new RegisterQuery(Batch: $"B-{middle}"));
        Time("a batch that is not there", file, new RegisterQuery(Batch: "none"));
        Time("a substance in one entry of 2,000", file, new RegisterQuery(Substance: "Substance 0777"));
        Time("part of a name, in every entry", file, new RegisterQuery(Substance: "substance"));
        Time("a part of a name that is nowhere", file, new RegisterQuery(Substance: "unobtainable"));
        Time("part of an oil's name", file, new RegisterQuery(Oil: "Oil 0123"));
        Time("part of a document", file, new RegisterQuery(Document: "DOC-0077"));
        Time("revision day", file, new RegisterQuery(Revised: "2026-02-11"));
        Time("oil, substance and day together", file, new RegisterQuery(null, "Substance 0123", "Oil 0123", null, "2026-02-24"));
        Time("oil and substance together, one entry of 2,000", file, new RegisterQuery(Substance: "Substance 1000", Oil: "Oil 0200"));
        Time("oil, substance and day, one entry of 2,000", file, new RegisterQuery(null, "Substance 1000", "Oil 0200", null, "2026-02-05"));
        Time("parts of oil and substance in every entry, and a day", file, new RegisterQuery(null, "substance", "oil", null, "2026-02-05"));
        Time("oil, document and day that never go together", file, new RegisterQuery(null, null, "Oil 0000", "DOC-0001", "2026-02-27"));
        Time("the first page", file, new RegisterQuery());
        Time("the latest page", file, new RegisterQuery(), RegisterStretch.Latest);
        Time("a page in the middle", file, new RegisterQuery(), new RegisterStretch(last / 2, true));
        Console.WriteLine($"memory at its peak so far: {Peak()} MB");
    }

    private static void Time(string what, string file, RegisterQuery query, RegisterStretch? stretch = null)
    {
        const int Page = 100;
        var taken = new List<double>();
        int found = 0;
        for (int round = 0; round < Rounds; round++)
        {
            var watch = Stopwatch.StartNew();
            using RegisterBook book = RegisterPlace.Named(file).OpenToRead();
            found = book.Stream(query, _ => { }, stretch ?? RegisterStretch.All).Take(Page).Count();
            taken.Add(watch.Elapsed.TotalMilliseconds);
        }

        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{what}: {taken.Order().ElementAt(Rounds / 2):0.0} ms, {taken.Min():0.0} to {taken.Max():0.0} ms, {found} entries read"
            )
        );
    }

    private static RegisterContent Content(string candle, out IReadOnlyDictionary<string, string> texts)
    {
        Desk desk = Desk.Lay(candle);
        var problems = new Problems();
        DeclarationFolder folder = DeclarationFolder.Open(candle, desk.Lawbook.Vocabulary);
        Assessment a = desk.Assessment;
        (RegisterContent content, texts) = RegisterWriter.Content(a, folder.Root, folder.Catalogue, [("label.pdf", [1, 2, 3])], problems);
        return content;
    }

    private static RegisterContent Varied(RegisterContent one, long number) =>
        one with
        {
            Batch = $"B-{number}",
            Oils =
            [
                .. one.Oils.Select(
                    (o, i) =>
                    {
                        long oil = (number + (i * 37)) % Oils;
                        return new UsedOil($"oil-{oil:0000}", $"Oil {oil:0000}", $"DOC-{oil:0000}", $"2026-02-{(oil % 28) + 1:00}");
                    }
                ),
            ],
            Substances =
            [
                .. one.Substances.Select((s, i) => s with { Name = $"Substance {(number + (i * 97)) % Names:0000}", Cas = s.Cas }),
            ],
        };

    private static long Peak() => Process.GetCurrentProcess().PeakWorkingSet64 / 1_000_000;
}
