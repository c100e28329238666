using Chandlery.Paper.Fonts;
using SkiaSharp;

namespace Chandlery.Sheets.Wild;

/// <summary>Prints a random sheet as PDF without any outside engine.</summary>
[System.Diagnostics.CodeAnalysis.SuppressMessage("Design", "CA1001", Justification = "It lives as long as the printing of one sheet.")]
public sealed class Press
{
    private const float PointsPerMm = 72f / 25.4f;
    private const float GutterMm = 8;
    private const float PadMm = 1.2f;
    private readonly SheetForm form;
    private readonly SKDocument document;
    private readonly SKFont body;
    private readonly SKFont bold;
    private readonly SKPaint ink = new() { Color = SKColors.Black, IsAntialias = true };
    private SKCanvas canvas = null!;
    private float y;
    private int column;
    private int page;

    private Press(SheetForm form, SKDocument document)
    {
        (this.form, this.document) = (form, document);
        body = Font(Weight.Regular, (float)form.TypePoints);
        bold = Font(Weight.Bold, (float)form.TypePoints * 1.15f);
    }

    /// <summary>The PDF of a sheet.</summary>
    public static byte[] Print(WildSheet sheet)
    {
        using var pdf = new MemoryStream();
        using (SKDocument document = SKDocument.CreatePdf(pdf))
        {
            var press = new Press(sheet.Form, document);
            press.NewPage();
            foreach (Block block in sheet.Blocks)
            {
                press.Set(block);
            }

            press.EndPage();
            document.Close();
        }

        return pdf.ToArray();
    }

    private static SKFont Font(Weight weight, float points) =>
        new(Face.Of(weight).Typeface, points)
        {
            Hinting = SKFontHinting.None,
            LinearMetrics = true,
            Subpixel = true,
        };

    private float Leading => (float)form.TypePoints * 1.3f;

    private float Top => ((float)form.MarginMm + 6) * PointsPerMm;

    private float Bottom => ((float)form.HeightMm - (float)form.MarginMm - 6) * PointsPerMm;

    private float ColumnWidth =>
        (((float)form.WidthMm - (2 * (float)form.MarginMm) - ((form.Columns - 1) * GutterMm)) / form.Columns) * PointsPerMm;

    private float Left => ((float)form.MarginMm * PointsPerMm) + (column * (ColumnWidth + (GutterMm * PointsPerMm)));

    private void NewPage()
    {
        float width = (float)form.WidthMm * PointsPerMm;
        float height = (float)form.HeightMm * PointsPerMm;
        canvas = form.IsTurned ? document.BeginPage(height, width) : document.BeginPage(width, height);
        if (form.IsTurned)
        {
            canvas.Translate(0, width);
            canvas.RotateDegrees(-90);
        }

        page++;
        column = 0;
        y = Top;
        float margin = (float)form.MarginMm * PointsPerMm;
        if (form.Header.Length > 0)
        {
            canvas.DrawText(form.Header, margin, margin, SKTextAlign.Left, body, ink);
        }

        canvas.DrawText($"{form.Footer} {page}".Trim(), margin, height - margin, SKTextAlign.Left, body, ink);
    }

    private void EndPage() => document.EndPage();

    // Goes on in the next column or page when there is no room for so much.
    private bool Room(float height)
    {
        if (y + height <= Bottom)
        {
            return false;
        }

        if (column + 1 < form.Columns)
        {
            column++;
            y = Top;
        }
        else
        {
            EndPage();
            NewPage();
        }

        return true;
    }

    private void Set(Block block)
    {
        switch (block)
        {
            case HeadingBlock heading:
                Room(4 * Leading);
                y += Leading * (heading.Level == 1 ? 0.8f : 0.3f);
                foreach (string line in Wrap(heading.Text, ColumnWidth, bold))
                {
                    y += Leading * 1.1f;
                    canvas.DrawText(line, Left, y, SKTextAlign.Left, bold, ink);
                }

                break;
            case ParagraphBlock paragraph:
                foreach (string line in paragraph.Lines.SelectMany(l => Wrap(l, ColumnWidth, body)))
                {
                    Room(Leading);
                    y += Leading;
                    DrawSpaced(line);
                }

                y += Leading * 0.3f;
                break;
            case TableBlock table:
                Set(table);
                break;
        }
    }

    // Several blanks are a tabulator.
    private void DrawSpaced(string line)
    {
        string[] parts = line.Split("     ", StringSplitOptions.RemoveEmptyEntries);
        for (int i = 0; i < parts.Length; i++)
        {
            canvas.DrawText(parts[i], Left + (i * ColumnWidth / parts.Length), y, SKTextAlign.Left, body, ink);
        }
    }

    private void Set(TableBlock table)
    {
        float[] widths = Widths(table);
        float HeadHeight() => table.Head.Sum(r => Height(r, widths));
        void Head()
        {
            foreach (IReadOnlyList<TableCell> row in table.Head)
            {
                Set(row, widths, table, true);
            }
        }

        Room(HeadHeight() + (4 * Leading));
        y += Leading * 0.5f;
        if (table.Rules is TableRules.Head or TableRules.Level)
        {
            Level(widths);
        }

        Head();
        foreach (IReadOnlyList<TableCell> row in table.Rows)
        {
            if (Room(Height(row, widths)) && table.RepeatsHead)
            {
                Head();
            }

            Set(row, widths, table, false);
        }

        y += Leading * 0.7f;
    }

    // Every column is as wide as its longest word at least; what is left goes by the wished widths.
    private float[] Widths(TableBlock table)
    {
        float sum = (float)table.Widths.Sum();
        float[] least = new float[table.Widths.Count];
        foreach (IReadOnlyList<TableCell> row in table.Head.Concat(table.Rows).Where(r => r.Count == least.Length))
        {
            for (int c = 0; c < least.Length; c++)
            {
                foreach (string word in row[c].Lines.SelectMany(l => l.Split(' ')).SelectMany(Chunks))
                {
                    least[c] = Math.Max(least[c], body.MeasureText(word) + (2 * PadMm * PointsPerMm) + 0.5f);
                }
            }
        }

        float[] widths = [.. table.Widths.Select(w => (float)w / sum * ColumnWidth)];
        float missing = widths.Zip(least, (w, l) => Math.Max(0, l - w)).Sum();
        float spare = widths.Zip(least, (w, l) => Math.Max(0, w - l)).Sum();
        float taken = spare <= 0 ? 0 : Math.Min(1, missing / spare);
        return [.. widths.Zip(least, (w, l) => w < l ? l : w - ((w - l) * taken))];
    }

    // Pieces that a line may not break: after a hyphen it may.
    private static IEnumerable<string> Chunks(string word)
    {
        int from = 0;
        for (int i = 0; i < word.Length - 1; i++)
        {
            if (word[i] == '-')
            {
                yield return word[from..(i + 1)];
                from = i + 1;
            }
        }

        yield return word[from..];
    }

    private void Level(float[] widths) => canvas.DrawRect(Left, y, widths.Sum(), 0.5f, ink);

    private float Height(IReadOnlyList<TableCell> row, float[] widths) =>
        (Texts(row, widths).Max(t => t.Count) * Leading) + (2 * PadMm * PointsPerMm);

    private List<List<string>> Texts(IReadOnlyList<TableCell> row, float[] widths)
    {
        var texts = new List<List<string>>();
        int at = 0;
        foreach (TableCell cell in row)
        {
            float width = widths.Skip(at).Take(cell.Span).Sum() - (2 * PadMm * PointsPerMm);
            texts.Add([.. cell.Lines.SelectMany(l => Wrap(l, width, body))]);
            at += cell.Span;
        }

        return texts;
    }

    private void Set(IReadOnlyList<TableCell> row, float[] widths, TableBlock table, bool isHead)
    {
        float pad = PadMm * PointsPerMm;
        float height = Height(row, widths);
        List<List<string>> texts = Texts(row, widths);
        float x = Left;
        int at = 0;
        for (int c = 0; c < row.Count; c++)
        {
            float width = widths.Skip(at).Take(row[c].Span).Sum();
            float down = table.IsMiddle ? (height - (2 * pad) - (texts[c].Count * Leading)) / 2 : 0;
            for (int l = 0; l < texts[c].Count; l++)
            {
                canvas.DrawText(texts[c][l], x + pad, y + pad + down + ((l + 0.8f) * Leading), SKTextAlign.Left, body, ink);
            }

            if (table.Rules == TableRules.Grid)
            {
                canvas.DrawRect(x, y, 0.5f, height, ink);
                canvas.DrawRect(x + width, y, 0.5f, height, ink);
            }

            x += width;
            at += row[c].Span;
        }

        if (table.Rules == TableRules.Grid)
        {
            Level(widths);
        }

        y += height;
        if (table.Rules is TableRules.Grid or TableRules.Level || (table.Rules == TableRules.Head && isHead))
        {
            Level(widths);
        }
    }

    // Breaks at blanks, after hyphens where a word is too wide for its line, and anywhere where nothing else helps.
    private static IEnumerable<string> Wrap(string text, float width, SKFont font)
    {
        if (text.Contains("     ", StringComparison.Ordinal))
        {
            return [text];
        }

        var lines = new List<string>();
        string line = "";
        foreach (string word in text.Split(' '))
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (font.MeasureText(longer) <= width)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            line = word;
            while (font.MeasureText(line) > width && line.Length > 1)
            {
                int fits = Enumerable.Range(1, line.Length).TakeWhile(n => font.MeasureText(line[..n]) <= width).DefaultIfEmpty(1).Last();
                int hyphen = line.LastIndexOf('-', fits - 1);
                int cut = hyphen > 0 ? hyphen + 1 : fits;
                lines.Add(line[..cut]);
                line = line[cut..];
            }
        }

        lines.Add(line);
        return lines;
    }
}
