using System.Text;

namespace Chandlery.Cli;

/// <summary>A table of plain text with columns as wide as their content, or wrapped where the terminal is narrower.</summary>
internal sealed class TextTable(params string[] headings)
{
    private const int WrittenAtOnce = 16_000;
    private const int Between = 2;
    private const int ReadableLast = 24;
    private const int Narrowest = 8;
    private readonly List<string[]> rows = [headings];
    private readonly HashSet<int> stops = [];

    /// <summary>Whether it has headings alone.</summary>
    public bool IsEmpty => rows.Count == 1;

    public void Add(params string[] cells) => rows.Add([.. cells.Select(Harmless)]);

    /// <summary>Adds a row that stops a sale or fails when it says so.</summary>
    /// <param name="stopsSale">Whether it does.</param>
    /// <param name="cells">Its cells.</param>
    public void Add(bool stopsSale, params string[] cells)
    {
        if (stopsSale)
        {
            stops.Add(rows.Count);
        }

        Add(cells);
    }

    /// <summary>The table for a terminal of this width.</summary>
    /// <param name="width">The width.</param>
    /// <param name="ink">Its colours; none for a file.</param>
    public string Render(int width, Ink ink)
    {
        var text = new StringWriter();
        Write(text, width, ink);
        return text.ToString();
    }

    /// <summary>Writes the table for a terminal of this width, some lines at a time: a long one is never held as one text.</summary>
    public void Write(TextWriter output, int width) => Write(output, width, output is HarmlessWriter ? Ink.Output : Ink.None);

    private void Write(TextWriter output, int width, Ink ink)
    {
        int[] widths = Widths(width);
        var text = new StringBuilder();
        for (int r = 0; r < rows.Count; r++)
        {
            List<string>[] cells = [.. rows[r].Select((cell, c) => Wrap(cell, widths[c]))];
            for (int l = 0; l < cells.Max(c => c.Count); l++)
            {
                string line = string.Join("  ", cells.Select((lines, c) => (l < lines.Count ? lines[l] : "").PadRight(widths[c])))
                    .TrimEnd();
                text.AppendLine(
                    r == 0 ? ink.Heading(line)
                    : stops.Contains(r) ? ink.Stop(line)
                    : line
                );
            }

            if (r == 0)
            {
                text.AppendLine(string.Join("  ", widths.Select(w => new string('-', w))));
            }

            if (text.Length > WrittenAtOnce)
            {
                output.Write(text);
                text.Clear();
            }
        }

        output.Write(text);
    }

    // Columns are as wide as their content. Where that is too wide together, the last one gives way first, as far as it can be read;
    // then the widest of the others, a letter at a time.
    private int[] Widths(int width)
    {
        int[] widths = [.. Enumerable.Range(0, headings.Length).Select(c => rows.Max(r => r[c].Length))];
        int over = widths.Sum() + (Between * (widths.Length - 1)) - width;
        int given = Math.Clamp(over, 0, Math.Max(0, widths[^1] - ReadableLast));
        widths[^1] -= given;
        for (over -= given; over > 0; over--)
        {
            int widest = Array.IndexOf(widths, widths.Max());
            if (widths[widest] <= Narrowest)
            {
                break;
            }

            widths[widest]--;
        }

        return widths;
    }

    // Names come from files of others: what steers a terminal or turns the direction of writing is shown as a mark, not done.
    /// <summary>The text without what would steer a terminal.</summary>
    public static string Harmless(string cell) => cell.Any(Steers) ? new string([.. cell.Select(Harmless)]) : cell;

    /// <summary>The letter, or a mark where it would steer a terminal.</summary>
    public static char Harmless(char c) => Steers(c) ? '\uFFFD' : c;

    private static bool Steers(char c) =>
        char.IsControl(c) || c is '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    /// <summary>Breaks a text at blanks into lines of at most this width, and a word that is longer than a line where the line ends.</summary>
    public static List<string> Wrap(string text, int width)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (string word in text.Split(' '))
        {
            string rest = word;
            if (line.Length > 0 && line.Length + 1 + rest.Length > width)
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            while (rest.Length > width)
            {
                lines.Add(rest[..width]);
                rest = rest[width..];
            }

            line.Append(line.Length > 0 ? " " : "").Append(rest);
        }

        lines.Add(line.ToString());
        return lines;
    }
}
