using System.Globalization;
using System.Text;
using Chandlery.Files;
using Chandlery.Register;
using Chandlery.Workbench.Answers;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>What was labelled, a page at a time, the latest first.</summary>
internal static class RegisterEndpoint
{
    private const int OnPage = 100;
    private const int MostWrong = 200;

    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Get(
            "/api/register",
            query =>
                Endpoint.Json(
                    Entries(rooms.Current.Register, query["find"], query["before"], query["check"] == "all"),
                    PageJson.Default.RegisterAnswer
                )
        );

    /// <summary>All entries as a table, or the whole register as a copy.</summary>
    public static Endpoint File(Rooms rooms) =>
        Endpoint.Get("/api/register/file", query => Export(rooms.Current.Register, query["as"].ToString()));

    private static RegisterAnswer Entries(RegisterPlace place, string? find, string? before, bool checksAll)
    {
        if (!place.Exists)
        {
            return new RegisterAnswer([], [], null, false);
        }

        try
        {
            using RegisterBook register = place.OpenToRead();
            (long last, string head) = register.Head();
            bool isSearch = !string.IsNullOrWhiteSpace(find);
            RegisterStretch stretch = long.TryParse(before, NumberStyles.None, CultureInfo.InvariantCulture, out long number)
                ? new RegisterStretch(number - 1, true)
                : RegisterStretch.Latest;
            var damaged = new SortedSet<long>();
            List<RegisterLine> lines =
            [
                .. (isSearch ? Queries(find!) : [new RegisterQuery()])
                    .SelectMany(q => register.Stream(q, n => damaged.Add(n), stretch).Take(OnPage + 1))
                    .DistinctBy(e => e.Number)
                    .OrderByDescending(e => e.Number)
                    .Take(OnPage + 1)
                    .Select(Line),
            ];
            bool isChecked = !isSearch && (checksAll || last <= OnPage);
            IReadOnlyList<string> wrong =
                isSearch || (before is not null && !checksAll)
                    ? [.. damaged.Select(n => $"entry {n} is damaged and was left out"), .. Doubt(register)]
                    : Wrong(register, isChecked);
            return new RegisterAnswer([.. lines.Take(OnPage)], wrong, head, lines.Count > OnPage) { Count = last, IsChecked = isChecked };
        }
        catch (IOException error)
        {
            return new RegisterAnswer([], [error.Message], null, false);
        }
    }

    /// <summary>Makes what is searched anew from what is signed; no entry is touched.</summary>
    public static Endpoint Rebuild(Rooms rooms) =>
        Endpoint.Post("/api/register/rebuild", PageJson.Default.RebuildRequest, _ => Rebuilt(rooms.Current.Register));

    private static IResult Rebuilt(RegisterPlace place)
    {
        if (!place.Exists)
        {
            return Endpoint.Missing("Nothing was entered yet.");
        }

        using RegisterBook register = place.Open();
        register.Rebuild();
        return Results.NoContent();
    }

    // What was found, was found all the same by what is signed; but what is searched may hold more or less.
    private static IEnumerable<string> Doubt(RegisterBook register) => register.SearchDoubt is { } doubt ? [doubt] : [];

    private static IEnumerable<RegisterQuery> Queries(string find) =>
        [new(Batch: find), new(Substance: find), new(Oil: find), new(Document: find)];

    // The whole is checked where a page shows it, or when it is asked for; otherwise what the first page shows, and the end.
    private static IReadOnlyList<string> Wrong(RegisterBook register, bool all)
    {
        var wrong = new List<string>();
        void Tell(string what)
        {
            if (wrong.Count < MostWrong)
            {
                wrong.Add(what);
            }
        }

        if (all)
        {
            register.Verify(Tell);
        }
        else
        {
            register.VerifyLatest(OnPage, Tell);
        }

        return wrong;
    }

    private static RegisterLine Line(RegisterEntry e) =>
        new RegisterLine
        {
            Number = e.Number,
            At = e.At,
            By = e.By,
            Batch = e.Content.Batch,
            Subject = e.Content.Subject,
            Candle = e.Content.Candle,
            Law = $"{e.Content.Edition}, {e.Content.AsOf}",
            Oils = [.. e.Content.Oils.Select(o => $"{o.Name} ({o.Document}, {o.Revised})")],
            Substances = [.. e.Content.Substances.Select(s => $"{s.Name} {s.Cas}".TrimEnd())],
            Documents = [.. e.Content.Documents],
            Declarations = [.. e.Content.Declarations],
            Hash = e.Hash,
        };

    private static IResult Export(RegisterPlace place, string format)
    {
        if (!place.Exists)
        {
            return Endpoint.Missing("Nothing was entered yet.");
        }

        using RegisterBook register = place.OpenToRead();
        FileStream passing = Passing();
        if (format == "copy")
        {
            WriteCopy(register, passing);
        }
        else
        {
            WriteTable(register, passing);
        }

        passing.Position = 0;
        return Results.Stream(passing, format == "copy" ? "application/vnd.sqlite3" : "text/csv; charset=utf-8");
    }

    // A file that only this user may read and that is gone with the answer: a register may be longer than memory.
    private static FileStream Passing()
    {
        var options = new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.ReadWrite,
            Options = FileOptions.DeleteOnClose,
        };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return new FileStream(Path.Combine(Path.GetTempPath(), $"chandlery-{Path.GetRandomFileName()}"), options);
    }

    private static void WriteCopy(RegisterBook register, FileStream passing)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("chandlery-register-");
        try
        {
            string copy = Path.Combine(folder.FullName, RegisterWriter.FileName);
            register.BackUp(copy);
            using FileStream written = System.IO.File.OpenRead(copy);
            written.CopyTo(passing);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void WriteTable(RegisterBook register, FileStream passing)
    {
        using var table = new StreamWriter(passing, new UTF8Encoding(false), leaveOpen: true);
        table.Write(Csv.Write(["number", "at", "by", "batch", "candle", "edition", "day", "oils", "hash"], []));
        foreach (RegisterEntry e in register.Stream(new RegisterQuery(), _ => { }, RegisterStretch.All))
        {
            table.Write(
                Csv.Write(
                    [
                        $"{e.Number}",
                        e.At,
                        e.By,
                        e.Content.Batch,
                        e.Content.Candle,
                        e.Content.Edition,
                        e.Content.AsOf,
                        string.Join("; ", e.Content.Oils.Select(o => $"{o.Name} ({o.Document}, {o.Revised})")),
                        e.Hash,
                    ],
                    []
                )
            );
        }
    }
}
