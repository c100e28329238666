using Chandlery.Intake.Pages;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Scenes;

namespace Chandlery.Intake;

/// <summary>Sets what speaks against the values of a page under it.</summary>
internal static class ReviewNotes
{
    private const double SizeMm = 2.8;
    private const double LineMm = 4;
    private const double MarginMm = 8;

    /// <summary>An outline's number, left of it and half above its upper edge.</summary>
    public static TextItem Number(int number, double leftMm, double topMm)
    {
        TextItem text = Text($"{number}", 0, topMm + (SizeMm / 3));
        return text with { XMm = leftMm - text.WidthMm - (SizeMm / 4) };
    }

    /// <summary>The notes as lines below the page's lower edge.</summary>
    public static IEnumerable<TextItem> Under(SheetPage page, IReadOnlyList<string> notes)
    {
        double baseline = page.HeightMm + LineMm;
        foreach (string line in notes.SelectMany(n => Wrapped(n, page.WidthMm - (2 * MarginMm))))
        {
            yield return Text(line, MarginMm, baseline);
            baseline += LineMm;
        }
    }

    private static TextItem Text(string text, double x, double baseline) =>
        Strokes.Text(text, Weight.Regular, x, baseline, SizeMm, Ink.SignalRed);

    private static IEnumerable<string> Wrapped(string note, double widthMm)
    {
        string line = "";
        foreach (
            string word in new string([.. note.Select(c => char.IsControl(c) ? ' ' : c)]).Split(' ', StringSplitOptions.RemoveEmptyEntries)
        )
        {
            string longer = line.Length == 0 ? word : line + " " + word;
            if (line.Length > 0 && Text(longer, 0, 0).WidthMm > widthMm)
            {
                yield return line;
                longer = "    " + word;
            }

            line = longer;
        }

        if (line.Length > 0)
        {
            yield return line;
        }
    }
}
