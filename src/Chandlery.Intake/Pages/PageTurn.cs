using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Chandlery.Intake.Pages;

/// <summary>How a page must be turned for its text to run from left to right.</summary>
/// <param name="Quarters">Quarter turns clockwise, 0 to 3.</param>
/// <param name="Width">Width of the page as it comes, points.</param>
/// <param name="Height">Height of the page as it comes, points.</param>
internal readonly record struct PageTurn(int Quarters, double Width, double Height)
{
    private const double SmallestSize = 1;
    private const double LargestSize = 400;
    private const double UsualSize = 9;

    /// <summary>Width after turning.</summary>
    public double TurnedWidth => Quarters % 2 == 0 ? Width : Height;

    /// <summary>Height after turning.</summary>
    public double TurnedHeight => Quarters % 2 == 0 ? Height : Width;

    /// <summary>Quarter turns that put this letter upright; -1 when it leans or has no place.</summary>
    public static int Of(Letter letter) =>
        !double.IsFinite(letter.StartBaseLine.X + letter.StartBaseLine.Y + letter.EndBaseLine.X + letter.EndBaseLine.Y)
            ? -1
            : letter.TextOrientation switch
            {
                TextOrientation.Horizontal => 0,
                TextOrientation.Rotate90 => letter.EndBaseLine.Y >= letter.StartBaseLine.Y ? 1 : 3,
                TextOrientation.Rotate180 => 2,
                TextOrientation.Rotate270 => letter.EndBaseLine.Y > letter.StartBaseLine.Y ? 1 : 3,
                _ => -1,
            };

    /// <summary>A point of the page as it comes (from its lower left corner) on the turned page (from its upper left corner).</summary>
    public (double X, double Y) Turned(PdfPoint point) =>
        Quarters switch
        {
            0 => (point.X, Height - point.Y),
            1 => (point.Y, point.X),
            2 => (Width - point.X, point.Y),
            _ => (Height - point.Y, Width - point.X),
        };

    /// <summary>A letter on the turned page.</summary>
    public PlacedLetter Turned(Letter letter)
    {
        (double left, double baseline) = Turned(letter.StartBaseLine);
        (double right, _) = Turned(letter.EndBaseLine);
        double size = letter.PointSize is > SmallestSize and < LargestSize ? letter.PointSize : UsualSize;
        return new PlacedLetter(letter.Value, left, right, baseline, size);
    }

    /// <summary>True when a letter stands on the turned page; a damaged file may place letters kilometres away, where nobody reads them.</summary>
    public bool Holds(PlacedLetter letter) =>
        letter.Left >= 0
        && letter.Right <= TurnedWidth
        && letter.Right >= letter.Left
        && letter.Baseline >= 0
        && letter.Baseline <= TurnedHeight;
}
