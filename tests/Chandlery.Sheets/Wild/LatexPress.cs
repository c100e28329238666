using System.Globalization;
using System.Text;

namespace Chandlery.Sheets.Wild;

/// <summary>Writes a random sheet for LaTeX, tables as longtables.</summary>
public static class LatexPress
{
    public static string Write(WildSheet sheet)
    {
        SheetForm f = sheet.Form;
        var tex = new StringBuilder();
        tex.Append(
            CultureInfo.InvariantCulture,
            $$$"""
            \documentclass[9pt]{extarticle}
            \usepackage[T1]{fontenc}\usepackage[utf8]{inputenc}\usepackage{lmodern,longtable,array,textcomp,amssymb}
            \usepackage[paperwidth={{{f.WidthMm}}}mm,paperheight={{{f.HeightMm}}}mm,margin={{{f.MarginMm + 4}}}mm]{geometry}
            \DeclareUnicodeCharacter{2264}{\ensuremath{\leq}}\DeclareUnicodeCharacter{2265}{\ensuremath{\geq}}
            \DeclareUnicodeCharacter{00B7}{\textperiodcentered}\DeclareUnicodeCharacter{00B0}{\textdegree}\DeclareUnicodeCharacter{00B3}{\textthreesuperior}
            \parindent0pt\raggedright\renewcommand{\arraystretch}{1.3}\setlength{\tabcolsep}{3pt}\sloppy
            \begin{document}\small

            """
        );
        foreach (Block block in sheet.Blocks)
        {
            tex.Append(
                block switch
                {
                    HeadingBlock h => $"\n\\medskip{{\\bfseries {E(h.Text)}}}\\par\n",
                    ParagraphBlock p => string.Concat(p.Lines.Where(l => l.Length > 0).Select(l => $"{E(l)}\\par\n")),
                    TableBlock t => Table(t),
                    _ => "",
                }
            );
        }

        return tex.Append("\\end{document}\n").ToString();
    }

    private static string Table(TableBlock t)
    {
        double sum = t.Widths.Sum();
        string bar = t.Rules == TableRules.Grid ? "|" : "";
        string kind = t.IsMiddle ? "m" : "p";
        string Column(double width) =>
            string.Create(
                CultureInfo.InvariantCulture,
                $">{{\\raggedright\\arraybackslash}}{kind}{{\\dimexpr {width / sum:0.000}\\linewidth-6pt-{(bar.Length > 0 ? "0.5pt" : "0pt")}}}{bar}"
            );
        string line = t.Rules is TableRules.Grid or TableRules.Level ? "\\hline\n" : "";
        string Cell(TableCell c)
        {
            string text = string.Join("\\newline ", c.Lines.Select(E));
            return c.Span > 1 ? $"\\multicolumn{{{c.Span}}}{{{bar}l{bar}}}{{{text}}}" : text;
        }

        string Row(IReadOnlyList<TableCell> r) => string.Join(" & ", r.Select(Cell)) + "\\tabularnewline\n" + line;
        string head = string.Concat(t.Head.Select(Row)) + (t.Rules == TableRules.Head && t.Head.Count > 0 ? "\\hline\n" : "");
        string end = t.Head.Count > 0 && t.RepeatsHead ? "\\endhead\n" : "";
        return $"\\begin{{longtable}}[l]{{{bar}{string.Concat(t.Widths.Select(Column))}}}\n{line}{head}{end}{string.Concat(t.Rows.Select(Row))}\\end{{longtable}}\n";
    }

    private static string E(string text) =>
        string.Concat(
            text.Select(c =>
                c switch
                {
                    '#' or '%' or '&' or '_' or '{' or '}' or '$' => "\\" + c,
                    '<' or '>' => $"\\ensuremath{{{c}}}",
                    '~' or '^' or '\\' => "",
                    '-' => "-\\hspace{0pt}",
                    _ => c.ToString(),
                }
            )
        );
}
