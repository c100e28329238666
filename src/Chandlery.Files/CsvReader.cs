using System.Text;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Reads CSV (RFC 4180) with commas, semicolons or tabs between the cells.</summary>
internal sealed class CsvReader
{
    private static readonly char[] Separators = [',', ';', '\t'];
    private readonly string text;
    private readonly string file;
    private readonly char separator;
    private readonly List<IReadOnlyList<CsvCell>> rows = [];
    private readonly StringBuilder cell = new();
    private List<CsvCell> row = [];
    private bool isBlank = true;
    private int line = 1;
    private int lineStart;
    private TextPlace start;

    private CsvReader(string csv, string file)
    {
        text = csv.TrimStart('\ufeff');
        this.file = file;
        separator = SeparatorOf(text);
        start = new TextPlace(file, 1, 1);
    }

    /// <summary>The table; what is wrong is noted with its place.</summary>
    public static CsvSheet Read(string csv, string file, Problems problems)
    {
        var reader = new CsvReader(csv, file);
        reader.ReadAll(problems);
        return new CsvSheet(reader.separator, reader.rows);
    }

    // The first line has the names of the columns, and no name holds one of the signs.
    private static char SeparatorOf(string text)
    {
        int end = text.IndexOf('\n', StringComparison.Ordinal);
        string first = end < 0 ? text : text[..end];
        return Separators.MaxBy(s => first.Count(c => c == s));
    }

    private void ReadAll(Problems problems)
    {
        bool quoted = false;
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (quoted && c == '"' && i + 1 < text.Length && text[i + 1] == '"')
            {
                cell.Append('"');
                i++;
            }
            else if (c == '"' && (quoted || isBlank))
            {
                quoted = !quoted;
                isBlank = false;
            }
            else if (quoted || (c != separator && c != '\n'))
            {
                cell.Append(c);
                isBlank &= char.IsWhiteSpace(c);
                CountLine(c, i);
            }
            else
            {
                CountLine(c, i);
                EndCell(i + 1);
                if (c == '\n')
                {
                    EndRow();
                }
            }
        }

        if (quoted)
        {
            problems.Add(start, "A quoted cell is not closed.", "Every opening \" needs a closing one.");
        }

        EndCell(text.Length);
        EndRow();
    }

    private void CountLine(char c, int at)
    {
        if (c == '\n')
        {
            line++;
            lineStart = at + 1;
        }
    }

    private void EndCell(int next)
    {
        row.Add(new CsvCell(Csv.Unguarded(cell.ToString().Trim()), start));
        cell.Clear();
        isBlank = true;
        start = new TextPlace(file, line, next - lineStart + 1);
    }

    private void EndRow()
    {
        if (row.Any(c => c.Text.Length > 0))
        {
            rows.Add(row);
        }

        row = [];
    }
}
