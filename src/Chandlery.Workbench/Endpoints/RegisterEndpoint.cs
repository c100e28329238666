using Chandlery.Files;
using Chandlery.Register;
using Chandlery.Workbench.Answers;
using Microsoft.AspNetCore.Http;

namespace Chandlery.Workbench.Endpoints;

/// <summary>What was labelled.</summary>
internal static class RegisterEndpoint
{
    private const int MostLines = 500;

    public static Endpoint Of(Rooms rooms) =>
        Endpoint.Get("/api/register", query => Endpoint.Json(Entries(rooms.Current, query["find"]), PageJson.Default.RegisterAnswer));

    /// <summary>All entries as a table, or the whole register as a copy.</summary>
    public static Endpoint File(Rooms rooms) => Endpoint.Get("/api/register/file", query => Export(rooms.Current, query["as"].ToString()));

    private static RegisterAnswer Entries(Workroom room, string? find)
    {
        if (!System.IO.File.Exists(room.RegisterPath))
        {
            return new RegisterAnswer([], [], null, false);
        }

        try
        {
            using RegisterFile register = RegisterFile.OpenToRead(room.RegisterPath);
            bool isSearch = !string.IsNullOrWhiteSpace(find);
            var damaged = new SortedSet<long>();
            IEnumerable<RegisterLine> Found(RegisterQuery query) => register.Stream(query, n => damaged.Add(n)).Select(Line);
            List<RegisterLine> lines = isSearch
                ?
                [
                    .. Found(new RegisterQuery(Batch: find))
                        .Concat(Found(new RegisterQuery(Substance: find)))
                        .Concat(Found(new RegisterQuery(Oil: find)))
                        .Concat(Found(new RegisterQuery(Document: find)))
                        .DistinctBy(l => l.Number)
                        .OrderByDescending(l => l.Number)
                        .Take(MostLines + 1),
                ]
                : [.. Found(new RegisterQuery()).Reverse().Take(MostLines + 1)];

            // The whole is checked when the page opens, not with every search.
            return new RegisterAnswer(
                [.. lines.Take(MostLines)],
                isSearch ? [.. damaged.Select(n => $"entry {n} is damaged and was left out")] : [.. register.Verify()],
                register.Head().Hash,
                lines.Count > MostLines
            );
        }
        catch (IOException error)
        {
            return new RegisterAnswer([], [error.Message], null, false);
        }
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

    private static IResult Export(Workroom room, string format)
    {
        if (!System.IO.File.Exists(room.RegisterPath))
        {
            return Endpoint.Missing("Nothing was entered yet.");
        }

        using RegisterFile register = RegisterFile.OpenToRead(room.RegisterPath);
        if (format == "copy")
        {
            DirectoryInfo folder = Directory.CreateTempSubdirectory("chandlery-register-");
            try
            {
                string copy = Path.Combine(folder.FullName, RegisterWriter.FileName);
                register.BackUp(copy);
                return Results.Bytes(System.IO.File.ReadAllBytes(copy), "application/vnd.sqlite3");
            }
            finally
            {
                folder.Delete(recursive: true);
            }
        }

        IEnumerable<IReadOnlyList<string>> rows = register
            .Stream(new RegisterQuery(), _ => { })
            .Select(e =>
                (IReadOnlyList<string>)
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
                    ]
            );
        return Results.Text(
            Csv.Write(["number", "at", "by", "batch", "candle", "edition", "day", "oils", "hash"], rows),
            "text/csv; charset=utf-8"
        );
    }
}
