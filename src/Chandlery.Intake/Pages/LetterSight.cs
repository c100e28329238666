using System.Text.RegularExpressions;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics.Colors;

namespace Chandlery.Intake.Pages;

/// <summary>Parts the letters of a page into those that a reader of the page sees and those that nobody sees.</summary>
internal static partial class LetterSight
{
    private const double NearWhite = 0.95;
    private const double SmallestPoints = 1.5;
    private const int LongestShown = 100;
    private const int MostNumbersShown = 40;

    /// <summary>The letters that can be seen, in their order, and those that cannot.</summary>
    /// <remarks>
    /// Hidden are letters without ink, white ones with nothing dark under them, those too small to read and those beyond the page's edge.
    /// </remarks>
    public static (IReadOnlyList<Letter> Seen, IReadOnlyList<Letter> Hidden) Of(Page page)
    {
        var seen = new List<Letter>();
        var hidden = new List<Letter>();
        List<PdfRectangle>? grounds = null;
        foreach (Letter letter in page.Letters)
        {
            bool isHidden =
                letter.RenderingMode is TextRenderingMode.Neither or TextRenderingMode.NeitherClip
                || letter.PointSize is > 0 and < SmallestPoints
                || IsOutside(letter, page)
                || (IsWhite(letter.FillColor) && !IsOn(grounds ??= [.. Grounds(page)], letter));
            (isHidden ? hidden : seen).Add(letter);
        }

        return (seen, hidden);
    }

    /// <summary>What to say of hidden letters; null when they hold no word.</summary>
    public static string? Told(Page page, IReadOnlyList<Letter> hidden)
    {
        string text = string.Join(
            ' ',
            string.Concat(hidden.Select(l => l.Value)).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
        );
        if (text.Count(char.IsLetterOrDigit) < 3)
        {
            return null;
        }

        string shown = text.Length > LongestShown ? text[..LongestShown] + "..." : text;
        List<string> numbers = [.. CasNumbers().Matches(text).Select(m => m.Value).Distinct().Take(MostNumbersShown)];
        string cas = numbers.Count == 0 ? "" : $"; it names the CAS numbers {string.Join(", ", numbers)}";
        return $"page {page.Number} holds text that cannot be seen on it (without ink, white, tiny or beyond its edge); it was not read: '{shown}'{cas}";
    }

    private static bool IsOutside(Letter letter, Page page)
    {
        PdfPoint start = letter.StartBaseLine;
        PdfPoint end = letter.EndBaseLine;
        return double.IsFinite(start.X + start.Y + end.X + end.Y)
            && (
                Math.Max(start.X, end.X) < 0
                || Math.Min(start.X, end.X) > page.Width
                || Math.Max(start.Y, end.Y) < 0
                || Math.Min(start.Y, end.Y) > page.Height
            );
    }

    private static bool IsWhite(IColor? color) => color is GrayColor or RGBColor or CMYKColor && Darkest(color) >= NearWhite;

    private static double Darkest(IColor color)
    {
        (double r, double g, double b) = color.ToRGBValues();
        return Math.Min(r, Math.Min(g, b));
    }

    // Filled shapes that are not white, and pictures: white letters on them are meant to be read.
    private static IEnumerable<PdfRectangle> Grounds(Page page) =>
        page
            .Paths.Where(p => p.IsFilled && !p.IsClipping && !IsWhite(p.FillColor))
            .Select(p => p.GetBoundingRectangle())
            .OfType<PdfRectangle>()
            .Concat(page.GetImages().Select(i => i.BoundingBox));

    private static bool IsOn(List<PdfRectangle> grounds, Letter letter)
    {
        double x = (letter.StartBaseLine.X + letter.EndBaseLine.X) / 2;
        double y = letter.StartBaseLine.Y + (letter.PointSize / 4);
        return grounds.Any(g => g.Left <= x && g.Right >= x && g.Bottom <= y && g.Top >= y);
    }

    [GeneratedRegex(@"(?<![0-9-])[1-9][0-9]{1,6}-[0-9]{2}-[0-9](?![0-9-])")]
    private static partial Regex CasNumbers();
}
