using Chandlery.Core.Hazards;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Intake;

/// <summary>
/// Draws a PDF's pages as the reader saw them, with what it took outlined: grey where nothing speaks against the value,
/// red where a reviewer must look. Red outlines are numbered, and under the page stands what speaks against each.
/// </summary>
public static class ReviewPages
{
    private const double SureMm = 0.15;
    private const double DoubtfulMm = 0.4;
    private const double RoomMm = 0.4;
    private const double RoomOfRowMm = 0.9;
    private const double AscentOfTypeSize = 0.75;

    /// <summary>The pages of one of the draft's PDFs.</summary>
    public static PaperDocument Draw(OilDraft draft, int document, IReadOnlyList<SheetPage> pages)
    {
        List<Outline> all = [.. Outlines(draft).Where(o => o.Document == document)];
        int first = pages.Count == 0 ? 0 : pages[0].Number;
        return new PaperDocument(
            $"Review: {draft.Sources[document].File}",
            "en",
            [.. pages.Select(p => Draw(p, [.. all.Where(o => o.Page == p.Number)], p.Number == first && document == 0 ? draft.Doubts : []))]
        );
    }

    /// <summary>A page as the reader saw it, with nothing outlined.</summary>
    public static Scene Draw(SheetPage page) => Draw(page, [], []);

    private static Scene Draw(SheetPage page, IReadOnlyList<Outline> outlines, IReadOnlyList<string> ofAll)
    {
        var items = new List<SceneItem>();
        items.AddRange(page.Rules.Select(r => Strokes.Line(r.Box.Left, r.Box.Top, r.Box.Right, r.Box.Bottom, Ink.Grey, 0.1)));
        items.AddRange(page.Words.Select(Draw));
        List<string> notes = [.. ofAll];
        int number = 0;
        foreach (Outline o in outlines)
        {
            items.Add(
                new PathItem(
                    Strokes.BoxPath(o.Box.Width + (2 * o.RoomMm), o.Box.Height + (2 * o.RoomMm)),
                    o.Box.Left - o.RoomMm,
                    o.Box.Top - o.RoomMm,
                    1,
                    null,
                    o.IsSure ? Ink.Grey : Ink.SignalRed,
                    o.IsSure ? SureMm : DoubtfulMm
                )
            );
            if (o.Doubts.Count > 0)
            {
                items.Add(ReviewNotes.Number(++number, o.Box.Left - o.RoomMm, o.Box.Top));
                notes.AddRange(o.Doubts.Select(d => $"{number} {o.What}: {d}"));
            }
        }

        double height = page.HeightMm;
        foreach (TextItem line in ReviewNotes.Under(page, notes))
        {
            items.Add(line);
            height = line.BaselineMm + line.SizeMm;
        }

        return new Scene(page.WidthMm, height, items, []);
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

    private sealed record Outline(int Document, int Page, Box Box, string What, IReadOnlyList<string> Doubts)
    {
        public bool IsSure { get; init; } = Doubts.Count == 0;

        public double RoomMm { get; init; } = ReviewPages.RoomMm;
    }

    private static IEnumerable<Outline> Outlines(OilDraft d)
    {
        IEnumerable<Outline?> head =
        [
            Of("name", d.Name),
            Of("supplier", d.Supplier),
            Of("document", d.Document),
            Of("version", d.Version),
            Of("revised", d.Revised),
            Of("classes", d.Classes),
            Of("flash point", d.FlashPoint),
            Of("density", d.DensityGramsPerMl),
            Of("amendment", d.Ifra?.Amendment),
            Of("certificate's date", d.Ifra?.Date),
        ];
        IEnumerable<Outline?> limits = d.Ifra?.Limits.Select(l => Of($"category {l.Category}", l.Limit)) ?? [];
        return head.Concat(limits).OfType<Outline>().Concat(d.Ingredients.SelectMany(Of));
    }

    // A row's values, and around them the row.
    private static IEnumerable<Outline> Of(DraftIngredient i)
    {
        List<Outline> values =
        [
            .. new[]
            {
                Of("name", i.Name),
                Of("CAS number", i.Cas),
                Of("EC number", i.Ec),
                Of("share", i.Share),
                Of("classes", i.Classes),
                Of("limits", i.Limits),
                Of("M-factors", i.M),
                Of<IReadOnlyList<ToxicityEstimate>>("estimates", i.Toxicity),
            }
                .OfType<Outline>()
                .Select(o => o with { What = $"{i.Name.Value}, {o.What}", IsSure = o.IsSure && i.Doubts.Count == 0 }),
        ];
        // What later sections or another PDF say of it stands elsewhere.
        IEnumerable<Box> own = new[] { Of("", i.Name), Of("", i.Cas), Of("", i.Ec), Of("", i.Share), Of("", i.Classes) }
            .OfType<Outline>()
            .Where(o => o.Page == i.Name.Page && o.Document == i.Name.Document)
            .Select(o => o.Box);
        return values.Prepend(new Outline(i.Name.Document, i.Name.Page, Box.Around(own), i.Name.Value, i.Doubts) { RoomMm = RoomOfRowMm });
    }

    private static Outline? Of<T>(string what, Found<T>? found) =>
        found is null ? null : new Outline(found.Document, found.Page, found.Box, what, found.Doubts);
}
