using Chandlery.Core.Hazards;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Lays what speaks against a page as a whole upon a draft and upon each value that comes from the page.</summary>
internal static class PageDoubts
{
    private const string RunsOverEdge = "a word runs over the page's edge there, and what it ends in cannot be seen";

    private const string GoesOnBeyondEdge = "its line goes on beyond the page's edge, where nothing can be seen: a column may be missing";

    /// <summary>The draft with the doubts of its document's pages.</summary>
    public static OilDraft Mark(OilDraft draft, IReadOnlyList<SheetPage> pages)
    {
        List<string> told = [.. pages.SelectMany(p => p.Doubts).Distinct()];
        draft = told.Count == 0 ? draft : draft with { Doubts = [.. draft.Doubts, .. told] };
        Dictionary<int, string> byPage = pages
            .Where(p => p.ValueDoubt is not null)
            .GroupBy(p => p.Number)
            .ToDictionary(g => g.Key, g => g.First().ValueDoubt!);
        ILookup<int, Box> cut = pages
            .SelectMany(p => p.Words.Where(CutWords.IsCut).Select(w => (p.Number, w.Box)))
            .ToLookup(w => w.Number, w => w.Box);
        ILookup<int, Box> beyond = pages
            .SelectMany(p => p.GoOnBeyondEdge.Select(b => (p.Number, Box: b)))
            .ToLookup(b => b.Number, b => b.Box);
        if (byPage.Count == 0 && cut.Count == 0 && beyond.Count == 0)
        {
            return draft;
        }

        Found<T>? Of<T>(Found<T>? found)
        {
            found = found is not null && byPage.TryGetValue(found.Page, out string? doubt) ? found.Doubted(doubt) : found;
            return found is not null && cut[found.Page].Any(found.Box.Meets) ? found.Doubted(RunsOverEdge) : found;
        }

        bool GoesOn(DraftIngredient row) =>
            beyond[row.Name.Page].Any(row.Name.Box.Meets) || (row.Cas is { } cas && beyond[cas.Page].Any(cas.Box.Meets));
        return draft with
        {
            Name = Of(draft.Name),
            Supplier = Of(draft.Supplier),
            Document = Of(draft.Document),
            Version = Of(draft.Version),
            Revised = Of(draft.Revised),
            Classes = Of(draft.Classes),
            FlashPoint = Of(draft.FlashPoint),
            DensityGramsPerMl = Of(draft.DensityGramsPerMl),
            Ingredients =
            [
                .. draft.Ingredients.Select(i =>
                    i with
                    {
                        Name = Of(i.Name)!,
                        Cas = Of(i.Cas),
                        Ec = Of(i.Ec),
                        Share = Of(i.Share),
                        Classes = Of(i.Classes),
                        Limits = Of(i.Limits),
                        M = Of<MFactors>(i.M),
                        Toxicity = Of<IReadOnlyList<ToxicityEstimate>>(i.Toxicity),
                        Doubts = GoesOn(i) ? [.. i.Doubts, GoesOnBeyondEdge] : i.Doubts,
                    }
                ),
            ],
            Ifra = draft.Ifra is { } ifra
                ? new DraftIfra(Of(ifra.Amendment), Of(ifra.Date), [.. ifra.Limits.Select(l => (l.Category, Of(l.Limit)!))])
                : null,
        };
    }
}
