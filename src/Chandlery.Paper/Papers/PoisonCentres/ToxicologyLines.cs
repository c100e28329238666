using Chandlery.Core.Law;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.PoisonCentres;

/// <summary>The text of a section of the candle's safety data sheet, a paragraph each.</summary>
internal static class ToxicologyLines
{
    /// <summary>The paragraphs; what keeps the sheet from being made where it cannot be made.</summary>
    public static IReadOnlyList<string> Of(PaperRequest request, Language language, int section)
    {
        var problems = new Problems();
        return SafetySheetMaker.Make(request.Assessment, language, request.Lawbook, 1, problems) is { } sheet
            ? [.. sheet.Sections.Single(s => s.Number == section).Subsections.SelectMany(s => s.Blocks).SelectMany(Lines)]
            : [.. problems.Found.Select(p => $"There is no safety data sheet to take it from: {p.What}")];
    }

    private static IEnumerable<string> Lines(SheetBlock block) =>
        block switch
        {
            SheetText text => [text.Text],
            SheetTable table => table.Rows.Select(r => string.Join(": ", r.Where(c => c.Length > 0))),
            _ => [],
        };
}
