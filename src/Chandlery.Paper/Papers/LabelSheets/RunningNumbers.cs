using System.Globalization;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Pdf;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Shapes;

namespace Chandlery.Paper.Papers.LabelSheets;

/// <summary>
/// Puts running numbers on labels: behind the batch code, or where the panel's foot is free. They are as large as the law's text, so
/// that nothing on the panel is smaller, and touch nothing that stands there.
/// </summary>
public sealed class RunningNumbers
{
    // Common practice, no source.
    private const double EdgeMm = 2.5;
    private const double ApartMm = 0.8;
    private const double StepMm = 0.5;
    private const double GapEm = 0.6;

    private readonly IReadOnlyList<Scene> pages;
    private readonly TextItem like;
    private readonly (double X, double BaselineMm) place;
    private readonly int digits;

    private RunningNumbers(IReadOnlyList<Scene> pages, TextItem like, (double X, double BaselineMm) place, int digits)
    {
        this.pages = pages;
        this.like = like;
        this.place = place;
        this.digits = digits;
    }

    /// <summary>Finds where a label's numbers go; null where its panel has no room for them.</summary>
    /// <param name="label">The label.</param>
    /// <param name="batchCode">The batch code that is printed on it; null for none.</param>
    /// <param name="last">The last number: all are written with as many digits.</param>
    public static RunningNumbers? On(MadePaper label, string? batchCode, int last)
    {
        IReadOnlyList<Scene> pages = label.Document.Pages;
        Scene page = pages[^1];
        Box panel = (label as MadeLabel)?.Panel ?? new Box(0, 0, page.WidthMm, page.HeightMm);
        List<ItemBounds> taken = [.. page.Items.SelectMany(Taken).Where(b => !Covers(b, panel))];
        List<TextItem> texts = [.. page.Items.SelectMany(Texts).Where(t => IsOn(t, panel))];
        if (texts.Count == 0)
        {
            return null;
        }

        int digits = last.ToString(CultureInfo.InvariantCulture).Length;
        TextItem? batch = batchCode is null ? null : texts.LastOrDefault(t => t.Shaped.Text.EndsWith(batchCode, StringComparison.Ordinal));
        TextItem like = batch ?? texts.MinBy(t => t.SizeMm)!;
        TextItem widest = Like(like, Written(0, digits), 0, 0);
        CutLine? edge = page.CutPath is { } path ? CutLine.Of(path) : null;
        foreach ((double x, double baseline) in Places(panel, batch, widest))
        {
            ItemBounds box = ItemBounds.Of([widest.Moved(x, baseline)])!;
            if (IsFree(box, taken, batch is not null && baseline == batch.BaselineMm && x > batch.XMm) && IsWellInside(box, panel, edge))
            {
                return new RunningNumbers(pages, like, (x, baseline), digits);
            }
        }

        return null;
    }

    /// <summary>The label's pages with a number.</summary>
    public IReadOnlyList<Scene> With(int number)
    {
        Scene last = pages[^1];
        TextItem text = Like(like, Written(number, digits), place.X, place.BaselineMm);
        return [.. pages.SkipLast(1), last with { Items = [.. last.Items, text] }];
    }

    // Behind the batch code first, then from the panel's lower right corner to the left and up.
    private static IEnumerable<(double X, double BaselineMm)> Places(Box panel, TextItem? batch, TextItem widest)
    {
        if (batch is not null)
        {
            yield return (batch.XMm + batch.WidthMm + (GapEm * batch.SizeMm), batch.BaselineMm);
        }

        double descent = widest.Face.Descent * widest.SizeMm;
        for (double baseline = panel.Bottom - EdgeMm - descent; baseline > panel.Y + EdgeMm; baseline -= StepMm)
        {
            for (double x = panel.Right - EdgeMm - widest.WidthMm; x >= panel.X + EdgeMm; x -= StepMm)
            {
                yield return (x, baseline);
            }
        }
    }

    // A line's box is higher than its figures, so that behind the batch code the boxes of its neighbours may meet the number's.
    private static bool IsFree(ItemBounds box, List<ItemBounds> taken, bool isBesideBatch)
    {
        double apart = isBesideBatch ? -(box.BottomMm - box.TopMm) / 4 : ApartMm;
        return taken.TrueForAll(t =>
            t.RightMm <= box.LeftMm - (isBesideBatch ? 0 : ApartMm)
            || t.LeftMm >= box.RightMm + ApartMm
            || t.BottomMm <= box.TopMm - apart
            || t.TopMm >= box.BottomMm + apart
        );
    }

    private static bool IsWellInside(ItemBounds box, Box panel, CutLine? edge) =>
        box.LeftMm >= panel.X + ApartMm
        && box.RightMm <= panel.Right - EdgeMm
        && box.TopMm >= panel.Y + ApartMm
        && box.BottomMm <= panel.Bottom - ApartMm
        && (edge is null || edge.Holds(box.LeftMm, box.TopMm, box.RightMm, box.BottomMm, EdgeMm));

    // Art lies under the panel and is cut off at its edge.
    private static IEnumerable<ItemBounds> Taken(SceneItem item) =>
        item is ClipItem ? []
        : item.Inside.Count > 0 ? item.Inside.SelectMany(Taken)
        : ItemBounds.Of([item]) is { } bounds ? [bounds]
        : [];

    private static IEnumerable<TextItem> Texts(SceneItem item) =>
        item is TextItem text ? [text]
        : item is ClipItem ? []
        : item.Inside.SelectMany(Texts);

    private static bool Covers(ItemBounds bounds, Box panel) =>
        bounds.LeftMm <= panel.X + 0.1
        && bounds.TopMm <= panel.Y + 0.1
        && bounds.RightMm >= panel.Right - 0.1
        && bounds.BottomMm >= panel.Bottom - 0.1;

    private static bool IsOn(TextItem text, Box panel) =>
        text.AngleDegrees == 0
        && text.XMm >= panel.X
        && text.XMm <= panel.Right
        && text.BaselineMm >= panel.Y
        && text.BaselineMm <= panel.Bottom;

    private static TextItem Like(TextItem like, string text, double x, double baseline) =>
        Strokes.Text(text, like.Face, x, baseline, like.SizeMm, Ink.Black);

    // The sign tells it from the batch code in every language.
    private static string Written(int number, int digits) => "№ " + number.ToString(new string('0', digits), CultureInfo.InvariantCulture);
}
