using System.Text;

namespace Chandlery.Sheets.Wild;

/// <summary>Writes a random sheet for groff with tbl.</summary>
public static class GroffPress
{
    // A box that is higher than a page is not printed at all.
    private const int MostRowsOfBox = 8;

    public static string Write(WildSheet sheet)
    {
        var text = new StringBuilder(
            ".pl 29.7c\n.po 1.5c\n.ll 18c\n.ps 8\n.vs 10\n.ad l\n.nh\n.wh 0 top\n.de top\n'sp 1.2c\n..\n.wh -1.5c end\n.de end\n'bp\n..\n"
        );
        foreach (Block block in sheet.Blocks)
        {
            text.Append(
                block switch
                {
                    HeadingBlock h => $".sp 0.5\n\\fB{E(h.Text)}\\fP\n.br\n",
                    ParagraphBlock p => string.Concat(p.Lines.Where(l => l.Length > 0).Select(l => $"{E(l)}\n.br\n")),
                    TableBlock t => Table(t),
                    _ => "",
                }
            );
        }

        return text.ToString();
    }

    private static string Table(TableBlock t)
    {
        double sum = t.Widths.Sum();
        string bar = t.Rules == TableRules.Grid ? " | " : " ";
        string widths = string.Join(bar, t.Widths.Select(w => $"lw({(int)(w / sum * 165) / 10}.{(int)(w / sum * 165) % 10}c)"));
        var text = new StringBuilder($".sp 0.5\n.TS\n{(t.Rules == TableRules.Grid ? "allbox " : "")}tab(@);\n{widths}.\n");
        foreach ((IReadOnlyList<TableCell> row, int at) in t.Head.Concat(t.Rows).Select((r, at) => (r, at)))
        {
            if (t.Rules == TableRules.Grid && at > 0 && at % MostRowsOfBox == 0)
            {
                text.Append($".TE\n.TS\nallbox tab(@);\n{widths}.\n");
            }

            if (row.Any(c => c.Span > 1))
            {
                text.Append(".T&\nl").Append(string.Concat(Enumerable.Repeat(" s", t.Widths.Count - 1))).Append(".\n");
                text.Append("T{\n")
                    .Append(string.Join("\n.br\n", row[0].Lines.Select(E)))
                    .Append("\nT}\n.T&\n")
                    .Append(widths)
                    .Append(".\n");
                continue;
            }

            text.Append(string.Join("@", row.Select(c => $"T{{\n{string.Join("\n.br\n", c.Lines.Select(E))}\nT}}"))).Append('\n');
            if (t.Rules is TableRules.Level || (t.Rules == TableRules.Head && t.Head.Contains(row)))
            {
                text.Append("_\n");
            }
        }

        return text.Append(".TE\n").ToString();
    }

    private static string E(string text)
    {
        string plain = text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("-", "\\-\\:", StringComparison.Ordinal);
        return plain.Length > 0 && plain[0] is '.' or '\'' ? "\\&" + plain : plain;
    }
}
