using Chandlery.Paper.Designs;
using Chandlery.Paper.Proofs.Reading;

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

    private const double MmPerPoint = PrintedPage.MmPerPoint;

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
                    .Select(l =>
                        l with
                        {
                            BaselineMm = l.BaselineMm - box.Y,
                            LeftMm = l.LeftMm - box.X,
                            RightMm = l.RightMm - box.X,
                            Letters = [.. l.Letters.Select(b => b with { X = b.X - box.X, Y = b.Y - box.Y })],
                        }
                    ),
            ],
            [
                .. RedSquares
                    .Where(r => r.X >= box.X && r.Right <= box.Right && r.Y >= box.Y && r.Bottom <= box.Bottom)
                    .Select(r => r with { X = r.X - box.X, Y = r.Y - box.Y }),
            ]
        );

    /// <summary>All text, lines joined by blanks.</summary>
    public string Text { get; } = string.Join(' ', Lines.Select(l => l.Text.Trim()));

    /// <summary>Measures every page of anybody's PDF.</summary>
    public static IReadOnlyList<MeasuredPage> ReadAll(byte[] pdf) => [.. AnyPdf.Read(pdf).Select(Measure)];

    /// <summary>Measures every page of a PDF that our writer has just made.</summary>
    public static IReadOnlyList<MeasuredPage> ReadOwn(byte[] pdf) => [.. (OwnPdf.TryRead(pdf) ?? AnyPdf.Read(pdf)).Select(Measure)];

    private static MeasuredPage Measure(PrintedPage page)
    {
        var lines = new List<List<PrintedLetter>>();
        foreach (PrintedLetter letter in page.Letters)
        {
            // Bold and regular runs of one line share the baseline and follow each other to the right.
            bool goesOn = lines.Count > 0 && Math.Abs(lines[^1][^1].Y - letter.Y) < 0.05 && letter.X >= lines[^1][^1].X - 0.05;
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
            [.. page.Areas.Where(a => a.Colour.IsRed && IsSquare(a.Bounds)).Select(a => a.Bounds)]
        )
        {
            Panel = PanelOf(page),
        };
    }

    private static MeasuredLine Line(List<PrintedLetter> letters, double pageHeight) =>
        new(
            string.Concat(letters.Select(l => l.Value)),
            (pageHeight - letters[0].Y) * MmPerPoint,
            Smallest(letters.Where(l => l.Value.Length == 1 && FlatLetters.Contains(l.Value[0], StringComparison.Ordinal))),
            Smallest(letters.Where(l => l.Value.Length == 1 && char.IsAsciiDigit(l.Value[0]))),
            letters.All(l => l.Colour.IsBlack)
        )
        {
            LeftMm = letters.Min(l => l.X) * MmPerPoint,
            RightMm = letters.Max(l => l.EndX) * MmPerPoint,
            IsLevel = letters.TrueForAll(l => l.IsLevel),
            Letters = [.. letters.Select(l => l.Outline).OfType<Box>()],
        };

    private static Box? PanelOf(PrintedPage page)
    {
        const double tolerance = 0.05;
        double width = page.Width * MmPerPoint;
        double height = page.Height * MmPerPoint;
        Box field = page
            .Areas.Where(a => a.Colour.IsWhite)
            .Select(a => a.Bounds)
            .LastOrDefault(b => (b.Y <= tolerance && b.Bottom >= height - tolerance) || (b.X <= tolerance && b.Right >= width - tolerance));
        double left = Math.Max(0, field.X);
        double top = Math.Max(0, field.Y);
        double right = Math.Min(width, field.Right);
        double bottom = Math.Min(height, field.Bottom);
        return right <= left || bottom <= top ? null : new Box(left, top, right - left, bottom - top);
    }

    // A frame of a pictogram is as wide as it is high; a red field of a front hardly ever is.
    private static bool IsSquare(Box box) => Math.Abs(box.Width - box.Height) < 0.05;

    private static double? Smallest(IEnumerable<PrintedLetter> letters) =>
        letters.Select(l => (double?)(l.Height * MmPerPoint)).DefaultIfEmpty(null).Min();
}
