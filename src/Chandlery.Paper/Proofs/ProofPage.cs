using Chandlery.Core.Assessed;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Proofs;

/// <summary>Draws a label at its true size with rulers and the measured values, for a reviewer with a ruler in hand.</summary>
public static class ProofPage
{
    private const double PageWidthMm = 210;
    private const double PageHeightMm = 297;
    private const double LeftMm = 20;
    private const double TopMm = 32;
    private const double LineMm = 0.12;
    private const double TypeMm = 2.6;

    /// <summary>The proof of a label's first page; the sheet grows with large labels.</summary>
    public static Scene Draw(Assessment a, Scene label, IReadOnlyList<Inspection> inspections)
    {
        double width = Math.Max(PageWidthMm, label.WidthMm + (2 * LeftMm));
        double tableTop = TopMm + label.HeightMm + 14;
        double height = Math.Max(PageHeightMm, tableTop + (inspections.Count * 5) + 12);
        var items = new List<SceneItem>
        {
            Strokes.Text($"Proof: {a.Candle.Name}", Weight.Bold, LeftMm, 12, 4.5, Ink.Black),
            Strokes.Text(
                $"{a.Edition.Name}, as of {a.AsOf:yyyy-MM-dd}. Print at 100 % and lay a ruler on it.",
                Weight.Regular,
                LeftMm,
                17.5,
                TypeMm,
                Ink.Black
            ),
        };
        items.AddRange(Rulers(label));
        items.AddRange(label.Items.Select(i => i.Moved(LeftMm, TopMm)));
        items.AddRange(Outlines(label));
        double y = tableTop;
        foreach (Inspection i in inspections)
        {
            Ink ink = i.Holds ? Ink.Black : Ink.SignalRed;
            items.Add(Strokes.Text(i.Holds ? "holds" : "FAILS", Weight.Bold, LeftMm, y, TypeMm, ink));
            items.Add(
                Strokes.Text($"{i.What}: {i.Measured}; required: {Shorten(i.Required)}", Weight.Regular, LeftMm + 14, y, TypeMm, ink)
            );
            items.Add(Strokes.Text(Shorten(i.Clause), Weight.Regular, LeftMm + 14, y + 2.6, 1.9, Ink.Grey));
            y += 5.6;
        }

        return new Scene(width, Math.Max(height, y + 8), items, label.Marks);
    }

    private static IEnumerable<SceneItem> Rulers(Scene label)
    {
        for (int mm = 0; mm <= label.WidthMm; mm++)
        {
            yield return Line(LeftMm + mm, TopMm - 2, LeftMm + mm, TopMm - 2 - Tick(mm));
            if (mm % 10 == 0)
            {
                yield return Strokes.Text($"{mm}", Weight.Regular, LeftMm + mm - 1, TopMm - 6.5, 1.9, Ink.Black);
            }
        }

        for (int mm = 0; mm <= label.HeightMm; mm++)
        {
            yield return Line(LeftMm - 2, TopMm + mm, LeftMm - 2 - Tick(mm), TopMm + mm);
            if (mm % 10 == 0)
            {
                yield return Strokes.Text($"{mm}", Weight.Regular, LeftMm - 9, TopMm + mm + 0.7, 1.9, Ink.Black);
            }
        }
    }

    // The label's edge and whatever has a legal size.
    private static IEnumerable<SceneItem> Outlines(Scene label)
    {
        yield return Box(LeftMm, TopMm, label.WidthMm, label.HeightMm);
        foreach (Mark mark in label.Marks)
        {
            yield return Box(LeftMm + mark.XMm, TopMm + mark.YMm, mark.WidthMm, mark.HeightMm);
        }
    }

    private static double Tick(int mm) =>
        mm % 10 == 0 ? 3
        : mm % 5 == 0 ? 2
        : 1.2;

    private static string Shorten(string text) => text.Length > 110 ? text[..109] + "…" : text;

    private static PathItem Box(double x, double y, double width, double height) =>
        new(Strokes.BoxPath(width, height), x, y, 1, null, Ink.Grey, LineMm);

    private static PathItem Line(double x1, double y1, double x2, double y2) => Strokes.Line(x1, y1, x2, y2, Ink.Black, LineMm);
}
