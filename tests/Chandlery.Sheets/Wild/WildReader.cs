using System.Diagnostics;
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
    private readonly List<double> times = [];

    /// <summary>Rows that were held back from tuning, and rows that were not.</summary>
    public WildScore Seen { get; } = new();

    public WildScore Unseen { get; } = new();

    /// <summary>How long a document takes, from its bytes to its draft.</summary>
    public double MedianMilliseconds => times.Count == 0 ? 0 : Math.Round(times.Order().ElementAt(times.Count / 2), 1);

    public OilDraft? Read(string where, WildSheet sheet, byte[] pdf)
    {
        WildScore score = sheet.IsSeen ? Seen : Unseen;
        long start = Stopwatch.GetTimestamp();
        Parsed<IReadOnlyList<SheetPage>> pages = PdfWords.Parse(pdf);
        var problems = new Problems();
        OilDraft? draft = pages.Success
            ? DraftMaker.Make([new SupplierPdf(where, pdf, pages.Value)], data, lawbook.Vocabulary, problems)
            : null;
        times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        if (draft is null)
        {
            score.Differences.Add($"refused {where}: {pages.Reason} {string.Join(' ', problems.Found)}");
            draft = new OilDraft([], null, null, null, null, null, null, [], null, null, null, ["nothing could be read"]);
        }

        score.Add(where, sheet, draft);
        return draft;
    }
}
