using Chandlery.Files;

namespace Chandlery.Register;

/// <summary>Entries as CSV, a row for each.</summary>
public static class RegisterTable
{
    private static readonly string[] Heads =
    [
        "number",
        "at",
        "by",
        "batch",
        "subject",
        "candle",
        "edition",
        "asOf",
        "oils",
        "documents",
        "hash",
    ];

    /// <summary>Writes the table, an entry at a time.</summary>
    public static void Write(IEnumerable<RegisterEntry> entries, TextWriter output)
    {
        output.Write(Csv.Write(Heads, []));
        foreach (RegisterEntry e in entries)
        {
            output.Write(Csv.Write(Cells(e), []));
        }
    }

    private static string[] Cells(RegisterEntry e) =>
        [
            $"{e.Number}",
            e.At,
            e.By,
            e.Content.Batch,
            e.Content.Subject,
            e.Content.Candle,
            e.Content.Edition,
            e.Content.AsOf,
            string.Join("; ", e.Content.Oils.Select(o => $"{o.Name}, {o.Document}, {o.Revised}")),
            string.Join("; ", e.Content.Documents.Select(d => $"{d.Name} {d.Sha256}")),
            e.Hash,
        ];
}
