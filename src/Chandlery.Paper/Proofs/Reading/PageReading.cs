using Chandlery.Paper.Designs;

namespace Chandlery.Paper.Proofs.Reading;

/// <summary>Follows a page's content stream (ISO 32000-1, 7.8.2, annex A) and notes what it prints.</summary>
/// <param name="heightPoints">Height of the page.</param>
/// <param name="fonts">Its fonts by name.</param>
internal sealed class PageReading(double heightPoints, IReadOnlyDictionary<string, PrintedFont> fonts)
{
    private readonly List<PrintedLetter> letters = [];
    private readonly List<PrintedArea> areas = [];
    private readonly Stack<(Placement Place, PrintedColour Fill)> kept = new();
    private readonly List<object> operands = [];
    private Placement place = Placement.None;
    private Placement text = Placement.None;
    private PrintedColour fill = PrintedColour.Black;
    private PrintedFont? font;
    private double typeSize;
    private PathBounds path = new();

    /// <summary>Letters in the order of drawing.</summary>
    public IReadOnlyList<PrintedLetter> Letters => letters;

    /// <summary>Areas in the order of drawing.</summary>
    public IReadOnlyList<PrintedArea> Areas => areas;

    /// <summary>Follows the stream.</summary>
    /// <exception cref="FormatException">It has an operator that is not known here.</exception>
    public void Follow(byte[] content)
    {
        var scanner = new PdfScanner(content);
        for (object? next = scanner.Next(); next is not null; next = scanner.Next())
        {
            if (next is PdfWord word)
            {
                Do(word.Text);
                operands.Clear();
            }
            else
            {
                operands.Add(next);
            }
        }
    }

    private void Do(string operation)
    {
        switch (operation)
        {
            case "q":
                kept.Push((place, fill));
                break;
            case "Q":
                (place, fill) = kept.Pop();
                break;
            case "cm":
                place = Placed().Then(place);
                break;
            case "rg":
                fill = new PrintedColour(Number(0), Number(1), Number(2));
                break;
            case "m" or "l":
                path.To(Point(0));
                break;
            case "c":
                path.To(Point(0), Point(2), Point(4));
                break;
            case "f" or "B":
                areas.Add(new PrintedArea(Bounds(path), fill));
                path = new PathBounds();
                break;
            case "S" or "n":
                path = new PathBounds();
                break;
            case "Tf":
                font = fonts[((PdfName)operands[0]).Text];
                typeSize = Number(1);
                break;
            case "Tm":
                text = Placed();
                break;
            case "Tj":
                Show((byte[])operands[0]);
                break;
            case "TJ":
                ShowKerned((List<object>)operands[0]);
                break;
            case "BT" or "ET" or "h" or "W" or "RG" or "J" or "j" or "w" or "BMC" or "BDC" or "EMC" or "Do":
                break;
            default:
                throw new FormatException($"the operator {operation} is not known here");
        }
    }

    private void ShowKerned(List<object> parts)
    {
        foreach (object part in parts)
        {
            if (part is byte[] codes)
            {
                Show(codes);
            }
            else
            {
                Advance(-(double)part / 1000 * typeSize);
            }
        }
    }

    private void Show(byte[] codes)
    {
        for (int i = 0; i + 1 < codes.Length; i += 2)
        {
            int code = (codes[i] << 8) | codes[i + 1];
            double width = font!.WidthOf(code) / 1000 * typeSize;
            Placement whole = text.Then(place);
            (double x, double y) = whole.Of(0, 0);
            (double endX, double endY) = whole.Of(width, 0);
            (double Left, double Low, double Right, double High)? outline = font.OutlineOf(code);
            double height = outline is { } o ? (o.High - o.Low) * typeSize * whole.Upright : 0;
            letters.Add(
                new PrintedLetter(font.MeaningOf(code), x, y, endX, height, fill)
                {
                    Outline = outline is { } shape ? Around(whole, shape) : null,
                    IsLevel = PrintedLetter.RunsLevel(endX - x, endY - y),
                }
            );
            Advance(width);
        }
    }

    private Box Around(Placement whole, (double Left, double Low, double Right, double High) outline)
    {
        var corners = new PathBounds();
        corners.To(whole.Of(outline.Left * typeSize, outline.Low * typeSize));
        corners.To(whole.Of(outline.Right * typeSize, outline.High * typeSize));
        if (whole.B != 0 || whole.C != 0)
        {
            corners.To(whole.Of(outline.Right * typeSize, outline.Low * typeSize));
            corners.To(whole.Of(outline.Left * typeSize, outline.High * typeSize));
        }

        return Bounds(corners);
    }

    private void Advance(double along) => text = new Placement(1, 0, 0, 1, along, 0).Then(text);

    private Placement Placed() => new(Number(0), Number(1), Number(2), Number(3), Number(4), Number(5));

    private double Number(int index) =>
        index < operands.Count && operands[index] is double number ? number : throw new FormatException("a number is missing");

    private (double X, double Y) Point(int index) => place.Of(Number(index), Number(index + 1));

    private Box Bounds(PathBounds path)
    {
        const double mm = PrintedPage.MmPerPoint;
        return new Box(path.Left * mm, (heightPoints - path.Top) * mm, (path.Right - path.Left) * mm, (path.Top - path.Bottom) * mm);
    }
}
