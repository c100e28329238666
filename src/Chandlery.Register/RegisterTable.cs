using System.Text;

namespace Chandlery.Register;

/// <summary>Entries as CSV (RFC 4180), a row for each.</summary>
public static class RegisterTable
{
    /// <summary>The table.</summary>
    public static string Csv(IReadOnlyList<RegisterEntry> entries)
    {
        var csv = new StringBuilder("number,at,by,batch,subject,candle,edition,asOf,oils,documents,hash\r\n");
        foreach (RegisterEntry e in entries)
        {
            string[] cells =
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
            csv.AppendJoin(',', cells.Select(Quoted)).Append("\r\n");
        }

        return csv.ToString();
    }

    // A cell that starts like a formula gets an apostrophe, so that no spreadsheet runs it.
    private static string Quoted(string cell)
    {
        string safe = cell is ['=' or '+' or '-' or '@', ..] ? "'" + cell : cell;
        return safe.AsSpan().ContainsAny(",\"\r\n;") ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }
}
