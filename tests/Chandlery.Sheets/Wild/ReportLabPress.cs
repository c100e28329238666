using System.Text.Json;

namespace Chandlery.Sheets.Wild;

/// <summary>Writes a random sheet as JSON, which <c>reportlab_press.py</c> prints with ReportLab.</summary>
public static class ReportLabPress
{
    public static string Write(WildSheet sheet) =>
        JsonSerializer.Serialize(
            new
            {
                width = sheet.Form.WidthMm,
                height = sheet.Form.HeightMm,
                margin = sheet.Form.MarginMm,
                size = sheet.Form.TypePoints,
                blocks = sheet.Blocks.Select(One),
            }
        );

    private static object One(Block block) =>
        block switch
        {
            HeadingBlock h => new { kind = "heading", text = h.Text },
            ParagraphBlock p => new { kind = "lines", lines = p.Lines },
            TableBlock t => new
            {
                kind = "table",
                head = t.RepeatsHead ? t.Head.Count : 0,
                rows = t.Head.Concat(t.Rows).Select(r => r.Select(c => new { lines = c.Lines, span = c.Span })),
                widths = t.Widths,
                rules = t.Rules.ToString(),
                middle = t.IsMiddle,
            },
            _ => new { kind = "" },
        };
}
