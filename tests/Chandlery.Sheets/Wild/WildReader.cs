using Chandlery.Core.Law;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Yaml;

namespace Chandlery.Sheets.Wild;

/// <summary>Drafts from a random document's PDF, and scores the draft.</summary>
/// <param name="lawbook">The law, for its vocabulary.</param>
/// <param name="data">Texts by path relative to <c>data/</c>.</param>
public sealed class WildReader(Lawbook lawbook, IReadOnlyDictionary<string, string> data)
{
    /// <summary>Rows that were held back from tuning, and rows that were not.</summary>
    public WildScore Seen { get; } = new();

    public WildScore Unseen { get; } = new();

    public OilDraft? Read(string where, WildSheet sheet, byte[] pdf)
    {
        WildScore score = sheet.IsSeen ? Seen : Unseen;
        Parsed<IReadOnlyList<SheetPage>> pages = PdfWords.Parse(pdf);
        var problems = new Problems();
        OilDraft? draft = pages.Success
            ? DraftMaker.Make([new SupplierPdf(where, pdf, pages.Value)], data, lawbook.Vocabulary, problems)
            : null;
        if (draft is null)
        {
            score.Differences.Add($"refused {where}: {pages.Reason} {string.Join(' ', problems.Found)}");
            draft = new OilDraft([], null, null, null, null, null, null, [], null, null, null, ["nothing could be read"]);
        }

        score.Add(where, sheet, draft);
        return draft;
    }
}
