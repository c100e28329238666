using System.Diagnostics;
using Chandlery.Core.Law;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Pictures;
using Chandlery.Yaml;

namespace Chandlery.Sheets.Wild;

/// <summary>Drafts from a random document's PDF, and scores the draft.</summary>
/// <param name="lawbook">The law, for its vocabulary.</param>
/// <param name="data">Texts by path relative to <c>data/</c>.</param>
/// <param name="recognise">Recognises the words of pictures; null where scans are not read.</param>
public sealed class WildReader(Lawbook lawbook, IReadOnlyDictionary<string, string> data, PictureReader? recognise = null)
{
    private readonly List<(double Milliseconds, string Where)> times = [];
    private readonly DraftMaker drafts =
        DraftMaker.Of(data, lawbook.Vocabulary, new Problems())
        ?? throw new InvalidOperationException("The words of sheets cannot be read.");

    /// <summary>Rows that were held back from tuning, and rows that were not.</summary>
    public WildScore Seen { get; } = new();

    public WildScore Unseen { get; } = new();

    /// <summary>How long a document takes, from its bytes to its draft.</summary>
    public double MedianMilliseconds => times.Count == 0 ? 0 : Math.Round(times.Order().ElementAt(times.Count / 2).Milliseconds, 1);

    /// <summary>The slowest document.</summary>
    public (double Milliseconds, string Where) Slowest => times.Count == 0 ? default : times.Max();

    public OilDraft? Read(string where, WildSheet sheet, byte[] pdf)
    {
        WildScore score = sheet.IsSeen ? Seen : Unseen;
        long start = Stopwatch.GetTimestamp();
        Parsed<IReadOnlyList<SheetPage>> pages = PdfWords.Parse(pdf, recognise);
        var problems = new Problems();
        OilDraft? draft = pages.Success ? drafts.Make([new SupplierPdf(where, pdf, pages.Value)], problems) : null;
        times.Add((Stopwatch.GetElapsedTime(start).TotalMilliseconds, where));
        if (draft is null)
        {
            score.Differences.Add($"refused {where}: {pages.Reason} {string.Join(' ', problems.Found)}");
            draft = new OilDraft
            {
                Sources = [],
                Name = null,
                Supplier = null,
                Document = null,
                Version = null,
                Revised = null,
                Classes = null,
                Ingredients = [],
                FlashPoint = null,
                DensityGramsPerMl = null,
                Ifra = null,
                Doubts = ["nothing could be read"],
            };
        }

        score.Add(where, sheet, draft);
        return draft;
    }
}
