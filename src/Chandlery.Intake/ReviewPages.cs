using Chandlery.Core.Hazards;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Intake;

/// <summary>
/// Draws a PDF's pages as the reader saw them, with what it took outlined: grey where nothing speaks against the value,
/// red where a reviewer must look.
/// </summary>
public static class ReviewPages
{
    private const double SureMm = 0.15;
    private const double DoubtfulMm = 0.4;
    private const double RoomMm = 0.4;
    private const double AscentOfTypeSize = 0.75;

    /// <summary>The pages of one of the draft's PDFs.</summary>
    public static PaperDocument Draw(OilDraft draft, int document, IReadOnlyList<SheetPage> pages) =>
        new(
            $"Review: {draft.Sources[document].File}",
            "en",
            [.. pages.Select(p => Draw(p, [.. Boxes(draft).Where(b => b.Document == document && b.Page == p.Number)]))]
        );

    /// <summary>A page as the reader saw it, with nothing outlined.</summary>
    public static Scene Draw(SheetPage page) => Draw(page, []);

    private static Scene Draw(SheetPage page, IReadOnlyList<Outline> outlines)
    {
        var items = new List<SceneItem>();
        items.AddRange(page.Rules.Select(r => Strokes.Line(r.Box.Left, r.Box.Top, r.Box.Right, r.Box.Bottom, Ink.Grey, 0.1)));
        items.AddRange(page.Words.Select(Draw));
        foreach (Outline o in outlines)
        {
            items.Add(
                new PathItem(
                    Strokes.BoxPath(o.Box.Width + (2 * RoomMm), o.Box.Height + (2 * RoomMm)),
                    o.Box.Left - RoomMm,
                    o.Box.Top - RoomMm,
                    1,
                    null,
                    o.IsSure ? Ink.Grey : Ink.SignalRed,
                    o.IsSure ? SureMm : DoubtfulMm
                )
            );
        }

        return new Scene(page.WidthMm, page.HeightMm, items, []);
    }

    // Our face is wider or narrower than the sheet's: the word is set as wide as it was.
    private static TextItem Draw(Word word)
    {
        TextItem atFullSize = Strokes.Text(
            word.Text,
            Weight.Regular,
            word.Box.Left,
            word.Box.Top + (AscentOfTypeSize * word.TypeSize),
            word.TypeSize,
            Ink.Black
        );
        double squeeze = atFullSize.WidthMm <= 0 ? 1 : Math.Min(1, word.Box.Width / atFullSize.WidthMm);
        return atFullSize with { SizeMm = word.TypeSize * squeeze };
    }

    private sealed record Outline(int Document, int Page, Box Box, bool IsSure);

    private static IEnumerable<Outline> Boxes(OilDraft d)
    {
        IEnumerable<Outline?> head =
        [
            Of(d.Name),
            Of(d.Supplier),
            Of(d.Document),
            Of(d.Version),
            Of(d.Revised),
            Of(d.Classes),
            Of(d.FlashPoint),
            Of(d.DensityGramsPerMl),
            Of(d.Ifra?.Amendment),
            Of(d.Ifra?.Date),
        ];
        IEnumerable<Outline?> limits = d.Ifra?.Limits.Select(l => Of(l.Limit)) ?? [];
        return head.Concat(limits).Concat(d.Ingredients.SelectMany(Of)).OfType<Outline>();
    }

    private static IEnumerable<Outline?> Of(DraftIngredient i) =>
        new[]
        {
            Of(i.Name),
            Of(i.Cas),
            Of(i.Ec),
            Of(i.Share),
            Of(i.Classes),
            Of(i.Limits),
            Of(i.M),
            Of<IReadOnlyList<ToxicityEstimate>>(i.Toxicity),
        }.Select(o => o is null ? null : o with { IsSure = o.IsSure && i.Doubts.Count == 0 });

    private static Outline? Of<T>(Found<T>? found) =>
        found is null ? null : new Outline(found.Document, found.Page, found.Box, found.Doubts.Count == 0);
}
