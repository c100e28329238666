using System.Text;

namespace Chandlery.Cli;

/// <summary>A table of plain text with columns as wide as their content, the last one wrapped.</summary>
internal sealed class TextTable(params string[] headings)
{
    private const int WrittenAtOnce = 16_000;
    private readonly List<string[]> rows = [headings];

    public void Add(params string[] cells) => rows.Add([.. cells.Select(Harmless)]);

    /// <summary>The table for a terminal of this width.</summary>
    public string Render(int width)
    {
        var text = new StringWriter();
        Write(text, width);
        return text.ToString();
    }

    /// <summary>Writes the table for a terminal of this width, some lines at a time: a long one is never held as one text.</summary>
    public void Write(TextWriter output, int width)
    {
        int columns = headings.Length;
        int[] widths = [.. Enumerable.Range(0, columns).Select(c => rows.Max(r => r[c].Length))];
        int before = widths[..^1].Sum() + (2 * (columns - 1));
        int last = Math.Max(24, width - before);
        var text = new StringBuilder();
        for (int r = 0; r < rows.Count; r++)
        {
            List<string> lines = Wrap(rows[r][^1], last);
            for (int l = 0; l < lines.Count; l++)
            {
                IEnumerable<string> cells = Enumerable.Range(0, columns - 1).Select(c => (l == 0 ? rows[r][c] : "").PadRight(widths[c]));
                text.AppendLine((string.Join("  ", cells.Append(lines[l]))).TrimEnd());
            }

            if (r == 0)
            {
                text.AppendLine(string.Join("  ", widths.Select((w, c) => new string('-', c == columns - 1 ? Math.Min(w, last) : w))));
            }

            if (text.Length > WrittenAtOnce)
            {
                output.Write(text);
                text.Clear();
            }
        }

        output.Write(text);
    }

    // Names come from files of others: what steers a terminal or turns the direction of writing is shown as a mark, not done.
    /// <summary>The text without what would steer a terminal.</summary>
    public static string Harmless(string cell) => cell.Any(Steers) ? new string([.. cell.Select(c => Steers(c) ? '\uFFFD' : c)]) : cell;

    private static bool Steers(char c) => char.IsControl(c) || c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    /// <summary>Breaks a text at blanks into lines of at most this width.</summary>
    public static List<string> Wrap(string text, int width)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (string word in text.Split(' '))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        lines.Add(line.ToString());
        return lines;
    }
}
