using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Graphics;

namespace Chandlery.Tests.Paper;

/// <summary>Measures a PDF from itself.</summary>
internal sealed class PdfReader : IDisposable
{
    private const double MmPerPoint = 25.4 / 72;
    private readonly PdfDocument document;

    public PdfReader(byte[] pdf) => document = PdfDocument.Open(pdf);

    public IReadOnlyList<Page> Pages => [.. document.GetPages()];

    public (double Width, double Height) SizeMm(int page = 0) => (Pages[page].Width * MmPerPoint, Pages[page].Height * MmPerPoint);

    /// <summary>All text in the order of drawing, lines joined by blanks.</summary>
    public string Text(int page = 0)
    {
        var text = new System.Text.StringBuilder();
        Letter? last = null;
        foreach (Letter letter in Pages[page].Letters)
        {
            if (last is not null && (Math.Abs(letter.StartBaseLine.Y - last.StartBaseLine.Y) > 0.1 || IsElsewhere(last, letter)))
            {
                text.Append(' ');
            }

            text.Append(letter.Value);
            last = letter;
        }

        return text.ToString();
    }

    // In another column, though on the same line.
    private static bool IsElsewhere(Letter last, Letter letter) =>
        Math.Abs(letter.StartBaseLine.X - last.EndBaseLine.X) > letter.PointSize / 2 && last.Value != " ";

    /// <summary>Heights of every letter x, millimetres, from the outlines.</summary>
    public IEnumerable<double> XHeightsMm(int page = 0) =>
        Pages[page].Letters.Where(l => l.Value == "x").Select(l => l.BoundingBox.Height * MmPerPoint);

    /// <summary>Heights of the figures in a text, millimetres.</summary>
    public IEnumerable<double> DigitHeightsMm(Func<Letter, bool> where, int page = 0) =>
        Pages[page]
            .Letters.Where(l => l.Value.Length == 1 && char.IsDigit(l.Value[0]) && where(l))
            .Select(l => l.BoundingBox.Height * MmPerPoint);

    /// <summary>Bounding boxes of filled red paths, millimetres.</summary>
    public IEnumerable<(double Width, double Height)> RedPathsMm(int page = 0) => FilledMm(c => c.r > 0.8 && c.g < 0.1, page);

    /// <summary>Bounding boxes of filled black paths, millimetres.</summary>
    public IEnumerable<(double Width, double Height)> BlackPathsMm(int page = 0) =>
        FilledMm(c => c is { r: < 0.1, g: < 0.1, b: < 0.1 }, page);

    private IEnumerable<(double Width, double Height)> FilledMm(Func<(double r, double g, double b), bool> holds, int page)
    {
        foreach (PdfPath path in Pages[page].Paths)
        {
            if (
                path.IsFilled
                && path.FillColor?.ToRGBValues() is { } colour
                && holds((colour.r, colour.g, colour.b))
                && path.GetBoundingRectangle() is { } box
            )
            {
                yield return (box.Width * MmPerPoint, box.Height * MmPerPoint);
            }
        }
    }

    public void Dispose() => document.Dispose();
}
