using System.Globalization;
using System.Text;

namespace Chandlery.Files;

/// <summary>Writes CSV (RFC 4180).</summary>
public static class Csv
{
    /// <summary>Headings and rows.</summary>
    public static string Write(IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows)
    {
        var csv = new StringBuilder();
        foreach (IReadOnlyList<string> row in rows.Prepend(heads))
        {
            csv.AppendJoin(',', row.Select(Quoted)).Append("\r\n");
        }

        return csv.ToString();
    }

    // A cell that starts like a formula gets an apostrophe, so that no spreadsheet runs it.
    private static string Quoted(string cell)
    {
        string safe =
            cell is ['=' or '+' or '-' or '@', ..] && !double.TryParse(cell, CultureInfo.InvariantCulture, out _) ? "'" + cell : cell;
        return safe.AsSpan().ContainsAny(",\"\r\n;") ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }
}
