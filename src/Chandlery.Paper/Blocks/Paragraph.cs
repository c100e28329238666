using System.Xml.Linq;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Blocks;

/// <summary>A paragraph.</summary>
/// <param name="Spans">Its text.</param>
/// <param name="Size">Type size as a multiple of the document's base size.</param>
/// <param name="FigureMm">Least height of its figures in millimetres; 0 when the base size decides.</param>
/// <param name="Align">Alignment.</param>
public sealed record Paragraph(IReadOnlyList<Span> Spans, double Size, double FigureMm, Align Align) : Block
{
    internal static readonly BlockKind Kind = new("p", Read);

    /// <summary>Whether it begins left of the text, at the margin.</summary>
    public bool StandsOut { get; init; }

    /// <summary>What stands left of it at the margin, such as the number of a heading; empty for nothing.</summary>
    public string Hanging { get; init; } = "";

    /// <inheritdoc/>
    internal override bool LeadsUp => Size > 1 && FigureMm == 0;

    /// <inheritdoc/>
    internal override TagRole? Role => LeadsUp ? TagRole.Heading : TagRole.Paragraph;

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        double size = Size * flow.Sizes.TypeSizeMm;
        if (FigureMm > 0)
        {
            size = Math.Max(size, FigureMm / Spans.Min(s => Face.Of(s.Weight).DigitHeight));
        }

        Align align = flow.Region.IsRound ? Align.Centre : Align;
        double top = flow.Y;
        if (Hanging.Length > 0)
        {
            flow.PlaceText(LineBreaker.Pieces([new Span(Hanging, Spans[0].Weight)]), size, align, top, (from, to) => Out(flow, from, to));
        }

        flow.Y = flow.PlaceText(
            LineBreaker.Pieces(Spans),
            size,
            align,
            top,
            StandsOut ? (from, to) => Out(flow, from, to) : flow.Region.Stretches
        );
    }

    private static IReadOnlyList<(double Left, double Right)> Out(Flow flow, double from, double to) =>
        [.. flow.Region.Stretches(from, to).Select(s => (s.Left - flow.Sizes.InsetMm, s.Right))];

    private static Paragraph? Read(XElement element, MarkupReading reading)
    {
        List<Span> spans = reading.Spans(element, (string?)element.Attribute("weight") == "bold" ? Weight.Bold : Weight.Regular);
        if (spans.All(s => s.Text.Trim().Length == 0))
        {
            return null;
        }

        return new Paragraph(spans, reading.Number(element, "size", 1), reading.Number(element, "figure", 0), AlignOf(element, reading))
        {
            Language = (string?)element.Attribute("lang") ?? "",
            StandsOut = (string?)element.Attribute("out") == "yes",
            Hanging = (string?)element.Attribute("hang") ?? "",
        };
    }

    private static Align AlignOf(XElement element, MarkupReading reading)
    {
        switch ((string?)element.Attribute("align"))
        {
            case null or "left":
                return Align.Left;
            case "centre":
                return Align.Centre;
            case "right":
                return Align.Right;
            default:
                reading.Complain(element, "'align' must be left, centre or right.");
                return Align.Left;
        }
    }
}
