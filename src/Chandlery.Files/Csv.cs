using System.Buffers;
using System.Globalization;
using System.Text;

namespace Chandlery.Files;

/// <summary>Writes CSV (RFC 4180).</summary>
public static class Csv
{
    private static readonly SearchValues<char> Quotable = SearchValues.Create(",;\t\"\r\n");

    /// <summary>Headings and rows.</summary>
    /// <param name="heads">The first row.</param>
    /// <param name="rows">The others.</param>
    /// <param name="separator">What stands between cells.</param>
    public static string Write(IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows, char separator = ',')
    {
        var csv = new StringBuilder();
        foreach (IReadOnlyList<string> row in rows.Prepend(heads))
        {
            csv.AppendJoin(separator, row.Select(Quoted)).Append("\r\n");
        }

        return csv.ToString();
    }

    /// <summary>A cell's own text, without the apostrophe that keeps a spreadsheet from running it.</summary>
    public static string Unguarded(string cell) => cell is ['\'', ..] && IsFormula(cell) ? cell[1..] : cell;

    // A cell that starts like a formula gets an apostrophe, so that no spreadsheet runs it; one that starts so behind apostrophes of
    // its own gets one more, so that reading gives back what was there.
    private static string Quoted(string cell)
    {
        string safe = IsFormula(cell) && !double.TryParse(cell, CultureInfo.InvariantCulture, out _) ? "'" + cell : cell;
        return safe.AsSpan().ContainsAny(Quotable) ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }

    private static bool IsFormula(string cell) => cell.TrimStart('\'') is ['=' or '+' or '-' or '@', ..];
}
