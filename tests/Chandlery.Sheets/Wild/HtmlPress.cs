using System.Globalization;
using System.Net;
using System.Text;

namespace Chandlery.Sheets.Wild;

/// <summary>Writes a random sheet as HTML, for Chromium, LibreOffice and WeasyPrint.</summary>
public static class HtmlPress
{
    public static string Write(WildSheet sheet)
    {
        SheetForm f = sheet.Form;
        var html = new StringBuilder(
            string.Create(
                CultureInfo.InvariantCulture,
                $$"""
                <!DOCTYPE html><html lang="{{sheet.Language}}"><head><meta charset="utf-8"><title>t</title><style>
                @page { size: {{f.WidthMm}}mm {{f.HeightMm}}mm; margin: {{f.MarginMm}}mm }
                body { font: {{f.TypePoints}}pt "DejaVu Sans", "Liberation Sans", sans-serif } h2 { font-size: 1.2em; margin: 0.8em 0 0.3em } h3 { font-size: 1.05em; margin: 0.4em 0 0.2em }
                p { margin: 0 0 0.3em } table { border-collapse: collapse; width: 100% } td, th { padding: 1mm; text-align: left; font-weight: normal }
                tr { break-inside: avoid } .two { columns: 2; column-gap: 8mm }
                .Grid td, .Grid th { border: 0.3mm solid #222 } .Level td, .Level th { border-bottom: 0.3mm solid #222 } .Head th { border-bottom: 0.3mm solid #222 }
                </style></head><body>
                """
            )
        );
        html.Append("<p>&nbsp;</p>").Append(f.Columns == 2 ? "<div class=\"two\">" : "<div>");
        foreach (Block block in sheet.Blocks)
        {
            html.Append(
                block switch
                {
                    HeadingBlock { Level: 1 } h => $"<h2>{E(h.Text)}</h2>",
                    HeadingBlock h => $"<h3>{E(h.Text)}</h3>",
                    ParagraphBlock p => $"<p>{string.Join("<br>", p.Lines.Select(Spaced))}</p>",
                    TableBlock t => Table(t),
                    _ => "",
                }
            );
        }

        return html.Append("</div></body></html>").ToString();
    }

    private static string Spaced(string line) => E(line).Replace("     ", "&nbsp;&nbsp;&nbsp;&nbsp;&nbsp;", StringComparison.Ordinal);

    private static string Table(TableBlock t)
    {
        double sum = t.Widths.Sum();
        var html = new StringBuilder($"<table class=\"{t.Rules}\"{(t.Rules == TableRules.Grid ? " border=\"1\"" : "")}><colgroup>");
        foreach (double width in t.Widths)
        {
            html.Append(CultureInfo.InvariantCulture, $"<col style=\"width:{width / sum * 100:0.0}%\">");
        }

        html.Append("</colgroup>");
        string align = t.IsMiddle ? "middle" : "top";
        string Rows(IReadOnlyList<IReadOnlyList<TableCell>> rows, string tag) =>
            string.Concat(
                rows.Select(r =>
                    $"<tr>{string.Concat(r.Select(c => $"<{tag} colspan=\"{c.Span}\" valign=\"{align}\" style=\"vertical-align:{align}\">{string.Join("<br>", c.Lines.Select(E))}</{tag}>"))}</tr>"
                )
            );
        if (t.Head.Count > 0)
        {
            html.Append(t.RepeatsHead ? $"<thead>{Rows(t.Head, "th")}</thead>" : $"<tbody>{Rows(t.Head, "th")}</tbody>");
        }

        return html.Append($"<tbody>{Rows(t.Rows, "td")}</tbody></table>").ToString();
    }

    private static string E(string text) => WebUtility.HtmlEncode(text);
}
