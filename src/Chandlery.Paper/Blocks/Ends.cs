using System.Xml.Linq;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Blocks;

/// <summary>A text at the left edge and one of the base size at the right edge, on one line where both find room on it.</summary>
/// <param name="Left">Text at the left.</param>
/// <param name="Right">Text at the right.</param>
/// <param name="Size">Type size of the left text as a multiple of the base size.</param>
public sealed record Ends(IReadOnlyList<Span> Left, IReadOnlyList<Span> Right, double Size) : Block
{
    internal static readonly BlockKind Kind = new("ends", Read);

    private const double GapEm = 2;

    /// <inheritdoc/>
    internal override bool LeadsUp => Size > 1;

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        double size = Math.Min(1, Size) * flow.Sizes.TypeSizeMm;
        double large = Size * flow.Sizes.TypeSizeMm;
        double top = flow.Y;
        flow.Tagged(
            LeadsUp ? TagRole.Heading : TagRole.Paragraph,
            "",
            () => flow.Y = flow.PlaceText(LineBreaker.Pieces(Left), large, Align.Left, top, flow.Region.Stretches)
        );
        double wanted = WidthOf(Left, large) + (GapEm * size) + WidthOf(Right, size);
        bool fits = flow.Region.Edges(top, flow.Y) is { } free && free.Right - free.Left >= wanted;
        double beside = fits ? top + (flow.BaselineEm * (large - size)) : flow.Y;
        flow.Tagged(
            TagRole.Paragraph,
            "",
            () =>
            {
                double end = flow.PlaceText(
                    LineBreaker.Pieces(Right),
                    size,
                    fits ? Align.Right : Align.Left,
                    beside,
                    flow.Region.Stretches
                );
                flow.Y = fits ? flow.Y : end;
            }
        );
    }

    private static double WidthOf(IReadOnlyList<Span> spans, double size) => spans.Sum(s => LineBreaker.Width(s.Text, s.Weight, size));

    private static Ends Read(XElement element, MarkupReading reading) =>
        new(
            reading.Spans(element, (string?)element.Attribute("weight") == "bold" ? Weight.Bold : Weight.Regular),
            [new Span((string?)element.Attribute("right") ?? "", Weight.Regular)],
            reading.Number(element, "size", 1)
        );
}
