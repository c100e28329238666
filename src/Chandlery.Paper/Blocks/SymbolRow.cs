using System.Xml.Linq;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;

namespace Chandlery.Paper.Blocks;

/// <summary>A row of burn-safety symbols.</summary>
/// <param name="Symbols">Names, each with a caption (empty for none) and what it says in words.</param>
/// <param name="SideMm">Side of a symbol.</param>
public sealed record SymbolRow(IReadOnlyList<(string Name, string Caption, string About)> Symbols, double SideMm) : Block
{
    internal static readonly BlockKind Kind = new("symbols", Read);

    /// <inheritdoc/>
    internal override IEnumerable<string> SymbolNames => Symbols.Select(s => s.Name);

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        flow.FindRoom(SideMm, SideMm);
        double typeSize = flow.Sizes.TypeSizeMm;
        double caption = Symbols.Any(s => s.Caption.Length > 0) ? typeSize * flow.Sizes.LineSpacing : 0;
        double height = SideMm + caption;
        double? x = null;
        (double Left, double Right)? free = null;
        foreach ((string name, string text, string about) in Symbols)
        {
            double width = WidthOf(text, typeSize);
            if (x is { } next && next + width > free!.Value.Right)
            {
                flow.Y += height + Flow.SymbolGapMm;
                x = null;
            }

            if (x is null)
            {
                free = flow.Region.Edges(flow.Y, flow.Y + height);
                if (free is null)
                {
                    flow.Y += height;
                    continue;
                }

                x = flow.Region.IsRound ? Math.Max(free.Value.Left, Middle(free.Value, typeSize)) : free.Value.Left;
            }

            flow.Overflows(x.Value + width - free!.Value.Right);
            flow.PlaceSymbol(name, x.Value + ((width - SideMm) / 2), flow.Y, SideMm, about);
            if (text.Length > 0)
            {
                flow.PlaceText(
                    [new Piece(text, Weight.Regular, false)],
                    typeSize,
                    Align.Centre,
                    flow.Y + SideMm,
                    (_, _) => [(x.Value, x.Value + width + 0.01)]
                );
            }

            x += width + Flow.SymbolGapMm;
        }

        flow.Y += height;
    }

    private double WidthOf(string caption, double typeSize) => Math.Max(SideMm, LineBreaker.Width(caption, Weight.Regular, typeSize));

    private double Middle((double Left, double Right) free, double typeSize)
    {
        double width = Symbols.Sum(s => WidthOf(s.Caption, typeSize) + Flow.SymbolGapMm) - Flow.SymbolGapMm;
        return ((free.Left + free.Right) / 2) - (width / 2);
    }

    private static SymbolRow Read(XElement element, MarkupReading reading) =>
        new(
            [
                .. element
                    .Elements("s")
                    .Select(s => ((string?)s.Attribute("name") ?? "", s.Value.Trim(), (string?)s.Attribute("about") ?? "")),
            ],
            reading.Number(element, "side", 6)
        );
}
