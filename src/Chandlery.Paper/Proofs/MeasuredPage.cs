using System.Text;
using Chandlery.Paper.Designs;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Graphics;
using UglyToad.PdfPig.Graphics.Colors;

namespace Chandlery.Paper.Proofs;

/// <summary>A page measured from the PDF itself, by outlines, not by what we think we drew.</summary>
/// <param name="WidthMm">Page width.</param>
/// <param name="HeightMm">Page height.</param>
/// <param name="Lines">Lines in the order of drawing.</param>
/// <param name="RedSquares">The boxes around the red squares on a point.</param>
public sealed record MeasuredPage(double WidthMm, double HeightMm, IReadOnlyList<MeasuredLine> Lines, IReadOnlyList<Box> RedSquares)
{
    /// <summary>
    /// Where the legal panel lies: the last white field that reaches from one edge of the page to the opposite one; null for a page
    /// that is nothing else.
    /// </summary>
    public Box? Panel { get; init; }

    private const double MmPerPoint = 25.4 / 72;

    // Letters without overshoot, in the scripts that we print.
    private const string FlatLetters = "xvwzνк";

    /// <summary>Sides of the red squares, millimetres.</summary>
    public IEnumerable<double> RedSquareSidesMm => RedSquares.Select(r => r.Width / Math.Sqrt(2));

    /// <summary>What stands in a box, as a page of its own.</summary>
    public MeasuredPage Within(Box box) =>
        new(
            box.Width,
            box.Height,
            [
                .. Lines
                    .Where(l => l.LeftMm >= box.X && l.RightMm <= box.Right && l.BaselineMm >= box.Y && l.BaselineMm <= box.Bottom)
                    .Select(l => l with { BaselineMm = l.BaselineMm - box.Y, LeftMm = l.LeftMm - box.X, RightMm = l.RightMm - box.X }),
            ],
            [
                .. RedSquares
                    .Where(r => r.X >= box.X && r.Right <= box.Right && r.Y >= box.Y && r.Bottom <= box.Bottom)
                    .Select(r => r with { X = r.X - box.X, Y = r.Y - box.Y }),
            ]
        );

    /// <summary>All text, lines joined by blanks.</summary>
    public string Text { get; } = string.Join(' ', Lines.Select(l => l.Text.Trim()));

    /// <summary>Measures every page of a PDF.</summary>
    public static IReadOnlyList<MeasuredPage> ReadAll(byte[] pdf)
    {
        using PdfDocument document = PdfDocument.Open(pdf);
        return [.. document.GetPages().Select(Measure)];
    }

    private static MeasuredPage Measure(Page page)
    {
        var lines = new List<List<Letter>>();
        foreach (Letter letter in page.Letters)
        {
            // Bold and regular runs of one line share the baseline and follow each other to the right.
            bool goesOn =
                lines.Count > 0
                && Math.Abs(lines[^1][^1].StartBaseLine.Y - letter.StartBaseLine.Y) < 0.05
                && letter.StartBaseLine.X >= lines[^1][^1].StartBaseLine.X - 0.05;
            if (!goesOn)
            {
                lines.Add([]);
            }

            lines[^1].Add(letter);
        }

        return new MeasuredPage(
            page.Width * MmPerPoint,
            page.Height * MmPerPoint,
            [.. lines.Select(l => Line(l, page.Height))],
            [.. page.Paths.Where(IsRed).Select(p => BoxOf(p, page.Height)).Where(IsSquare)]
        )
        {
            Panel = PanelOf(page),
        };
    }

    private static MeasuredLine Line(List<Letter> letters, double pageHeight)
    {
        var text = new StringBuilder();
        foreach (Letter letter in letters)
        {
            text.Append(letter.Value);
        }

        return new MeasuredLine(
            text.ToString(),
            (pageHeight - letters[0].StartBaseLine.Y) * MmPerPoint,
            Smallest(letters.Where(l => l.Value.Length == 1 && FlatLetters.Contains(l.Value[0], StringComparison.Ordinal))),
            Smallest(letters.Where(l => l.Value.Length == 1 && char.IsAsciiDigit(l.Value[0]))),
            letters.All(l => IsBlack(l.Color))
        )
        {
            LeftMm = letters.Min(l => l.StartBaseLine.X) * MmPerPoint,
            RightMm = letters.Max(l => l.EndBaseLine.X) * MmPerPoint,
        };
    }

    private static Box? PanelOf(Page page)
    {
        const double tolerance = 0.05;
        double width = page.Width * MmPerPoint;
        double height = page.Height * MmPerPoint;
        Box field = page
            .Paths.Where(p => p.IsFilled && IsWhite(p.FillColor) && p.GetBoundingRectangle() is not null)
            .Select(p => BoxOf(p, page.Height))
            .LastOrDefault(b => (b.Y <= tolerance && b.Bottom >= height - tolerance) || (b.X <= tolerance && b.Right >= width - tolerance));
        double left = Math.Max(0, field.X);
        double top = Math.Max(0, field.Y);
        double right = Math.Min(width, field.Right);
        double bottom = Math.Min(height, field.Bottom);
        return right <= left || bottom <= top ? null : new Box(left, top, right - left, bottom - top);
    }

    private static bool IsWhite(IColor? colour)
    {
        (double r, double g, double b) = colour?.ToRGBValues() ?? (0, 0, 0);
        return r + g + b > 2.99;
    }

    private static Box BoxOf(PdfPath path, double pageHeight)
    {
        UglyToad.PdfPig.Core.PdfRectangle box = path.GetBoundingRectangle()!.Value;
        return new Box(box.Left * MmPerPoint, (pageHeight - box.Top) * MmPerPoint, box.Width * MmPerPoint, box.Height * MmPerPoint);
    }

    // A frame of a pictogram is as wide as it is high; a red field of a front hardly ever is.
    private static bool IsSquare(Box box) => Math.Abs(box.Width - box.Height) < 0.05;

    private static double? Smallest(IEnumerable<Letter> letters) =>
        letters.Select(l => (double?)(l.BoundingBox.Height * MmPerPoint)).DefaultIfEmpty(null).Min();

    private static bool IsBlack(IColor? colour)
    {
        (double r, double g, double b) = colour?.ToRGBValues() ?? (0, 0, 0);
        return r + g + b < 0.01;
    }

    private static bool IsRed(PdfPath path)
    {
        if (!path.IsFilled || path.FillColor is null || path.GetBoundingRectangle() is null)
        {
            return false;
        }

        (double r, double g, double b) = path.FillColor.ToRGBValues();
        return r > 0.8 && g < 0.2 && b < 0.2;
    }
}
