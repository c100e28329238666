using System.Globalization;
using System.Text;

namespace Chandlery.Sheets.Wild;

/// <summary>Writes a random sheet for Typst, which <c>typst_press.mjs</c> prints.</summary>
public static class TypstPress
{
    public static string Write(WildSheet sheet)
    {
        SheetForm f = sheet.Form;
        var text = new StringBuilder(
            string.Create(
                CultureInfo.InvariantCulture,
                $"#set page(width: {f.WidthMm}mm, height: {f.HeightMm}mm, margin: {f.MarginMm}mm, columns: {f.Columns}, header: [{E(f.Header)}], footer: [{E(f.Footer)}])\n"
                    + $"#set text(font: \"DejaVu Sans\", size: {f.TypePoints}pt, hyphenate: false)\n#set par(leading: 0.5em, spacing: 0.6em)\n"
            )
        );
        foreach (Block block in sheet.Blocks)
        {
            text.Append(
                block switch
                {
                    HeadingBlock h => $"#block(above: 1em, below: 0.5em)[#strong[{E(h.Text)}]]\n",
                    ParagraphBlock p => $"#block[{string.Join(" #linebreak() ", p.Lines.Where(l => l.Length > 0).Select(E))}]\n",
                    TableBlock t => Table(t),
                    _ => "",
                }
            );
        }

        return text.ToString();
    }

    private static string Table(TableBlock t)
    {
        string rule = t.Rules switch
        {
            TableRules.Grid => "0.5pt",
            TableRules.Level => "(x, y) => (bottom: 0.5pt)",
            TableRules.Head => $"(x, y) => if y == {t.Head.Count - 1} {{ (bottom: 0.5pt) }}",
            _ => "none",
        };
        string widths = string.Join(", ", t.Widths.Select(w => w.ToString("0.##", CultureInfo.InvariantCulture) + "fr"));
        string Cells(IEnumerable<IReadOnlyList<TableCell>> rows) => string.Concat(rows.SelectMany(r => r).Select(Cell));
        string head =
            t.Head.Count == 0 ? ""
            : t.RepeatsHead ? $"table.header({Cells(t.Head)}),\n"
            : Cells(t.Head);
        string align = t.IsMiddle ? "left + horizon" : "left + top";
        return $"#table(columns: ({widths},), stroke: {rule}, align: {align}, inset: 1.2mm,\n{head}{Cells(t.Rows)})\n";
    }

    private static string Cell(TableCell cell)
    {
        string text = string.Join(" #linebreak() ", cell.Lines.Select(E));
        return cell.Span > 1 ? $"table.cell(colspan: {cell.Span})[{text}], " : $"[{text}], ";
    }

    // A string within a piece of code means nothing to Typst but its letters.
    private static string E(string text) =>
        text.Length == 0
            ? ""
            : $"#\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\";";
}
