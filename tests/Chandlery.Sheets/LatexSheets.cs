using System.Globalization;
using System.Text;

namespace Chandlery.Sheets;

/// <summary>Corpus sheets as LaTeX, with its ligatures, kerning and hyphenation.</summary>
public static class LatexSheets
{
    public static string Write(Truth t, Tongue l, bool grid, int shareStyle)
    {
        string columns = grid ? "|p{4cm}|p{2cm}|p{1.7cm}|p{1.9cm}|p{5.2cm}|" : "p{4.2cm}p{2.1cm}p{2cm}p{3.6cm}p{2.6cm}";
        string line = grid ? "\\hline" : "";
        var tex = new StringBuilder(
            $$"""
            \documentclass[9pt,a4paper]{extarticle}
            \usepackage[T1]{fontenc}\usepackage{lmodern}\usepackage[utf8]{inputenc}\usepackage[{{(l.Code == "de" ? "ngerman" : "english")}}]{babel}
            \usepackage[margin=18mm]{geometry}\usepackage{longtable,booktabs,fancyhdr,textcomp}
            \pagestyle{fancy}\fancyhead[L]{ {{T(t.Name)}} }\fancyhead[R]{ {{l.Version}} {{t.Version}} }\fancyfoot[C]{ {{l.Page}} \thepage }
            \parindent0pt
            \begin{document}
            {\large\bfseries {{l.Title}}}\par {{T(l.Document)}} {{T(
                t.Document
            )}}, {{l.Version}} {{t.Version}}, {{l.Revised}}: {{t.Revised.ToString(l.DateFormat, CultureInfo.InvariantCulture)}}\par

            """
        );
        for (int s = 1; s <= 16; s++)
        {
            tex.Append($"\n\\medskip{{\\bfseries {l.Section} {s}: {T(l.Sections[s - 1])}}}\\par\n");
            switch (s)
            {
                case 1:
                    tex.Append(
                        $"\\begin{{tabular}}{{ll}}{l.Name}: & {T(t.Name)}\\\\{l.Supplier}: & {T(t.Supplier)}\\end{{tabular}}\\par\n"
                    );
                    break;
                case 2:
                    tex.Append(
                        $"2.1 {l.Classification}\\par {string.Join("\\par ", t.Classes.Select(T))}\\par 2.2 {T(l.Label)}\\par GHS07\\par\n"
                    );
                    break;
                case 3:
                    string heads = string.Join(
                        " & ",
                        (
                            grid
                                ? new[] { l.ColumnName, l.ColumnCas, l.ColumnEc, l.ColumnShare, l.ColumnClasses }
                                : [l.ColumnName, l.ColumnCas, l.ColumnShare, l.ColumnClasses.Split(' ')[0], l.ColumnCodes]
                        ).Select(T)
                    );
                    tex.Append(
                        $"3.2\\par\\footnotesize\\begin{{longtable}}{{{columns}}}{(grid ? "\\hline" : "\\toprule")} {heads}\\\\{(grid ? "\\hline" : "\\midrule")}\\endhead\n"
                    );
                    foreach (TruthIngredient i in t.Ingredients)
                    {
                        string[] cells = grid
                            ?
                            [
                                T(i.Name),
                                i.Cas,
                                i.Ec ?? "",
                                T(l.Share(i.Share, shareStyle)),
                                string.Join("; ", i.Classes.Select(T)) + (HtmlSheets.M(i, l) is { Length: > 0 } m ? "; " + m : ""),
                            ]
                            :
                            [
                                T(i.Name),
                                i.Cas,
                                T(l.Share(i.Share, shareStyle)),
                                string.Join("\\newline ", i.Classes.Select(c => T(c.Split(',')[0]))),
                                string.Join("\\newline ", i.Classes.Select(c => c.Split(", ")[^1])),
                            ];
                        tex.Append(string.Join(" & ", cells)).Append($"\\\\{line}{(grid ? "" : "[3pt]")}\n");
                    }

                    tex.Append($"{(grid ? "" : "\\bottomrule")}\\end{{longtable}}\\normalsize {T(l.FullText)}\\par\n");
                    break;
                case 9:
                    tex.Append(
                        $"{T(l.Flash)}: {(t.FlashIsLowerBound ? "$>$ " : "")}{l.Number(t.FlashCelsius)} \\textdegree C ({l.ClosedCup})\\par {T(l.Density)}: {l.Number(t.Density)} g/cm$^3$\\par\n"
                    );
                    break;
                case 11 when !grid:
                    foreach (TruthIngredient i in t.Ingredients.Where(i => i.OralMgPerKg is not null))
                    {
                        tex.Append($"{T(i.Name)} ({i.Cas})\\par {l.Ate}: {Truth.Figure(i.OralMgPerKg!.Value)} mg/kg\\par\n");
                    }

                    break;
                case 12 when !grid:
                    foreach (TruthIngredient i in t.Ingredients.Where(i => HtmlSheets.M(i, l).Length > 0))
                    {
                        tex.Append($"{i.Cas} {T(i.Name)}: {HtmlSheets.M(i, l)}\\par\n");
                    }

                    break;
                default:
                    tex.Append($"{s}.1\\par --\\par\n");
                    break;
            }
        }

        return tex.Append("\\end{document}\n").ToString();
    }

    private static string T(string text) =>
        text.Replace("\\", "\\textbackslash ", StringComparison.Ordinal)
            .Replace("&", "\\&", StringComparison.Ordinal)
            .Replace("%", "\\%", StringComparison.Ordinal)
            .Replace("<", "$<$", StringComparison.Ordinal)
            .Replace(">=", "$\\geq$", StringComparison.Ordinal)
            .Replace("≥", "$\\geq$", StringComparison.Ordinal)
            .Replace("≤", "$\\leq$", StringComparison.Ordinal)
            .Replace("$<$=", "$\\leq$", StringComparison.Ordinal)
            .Replace("\u2013", "--", StringComparison.Ordinal);
}
