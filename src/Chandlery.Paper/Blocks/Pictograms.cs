using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;

namespace Chandlery.Paper.Blocks;

/// <summary>The hazard pictograms; text flows beside them.</summary>
/// <param name="Codes">GHS codes.</param>
public sealed record Pictograms(IReadOnlyList<string> Codes) : Block
{
    internal static readonly BlockKind Kind = new(
        "pictograms",
        (element, _) =>
            new Pictograms(MarkupReading.Words(element, "codes")) { HasTextBelow = (string?)element.Attribute("text") == "below" }
    );

    private const double TextGapMm = 1.5;

    // In less room than so many letters' heights text beside a picture is a ladder of single words.
    private const double LeastRoomEm = 9;

    /// <summary>Whether what follows begins below them, as tables do, which they would tear apart.</summary>
    public bool HasTextBelow { get; init; }

    /// <inheritdoc/>
    internal override IEnumerable<string> SymbolNames => Codes;

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        if (Codes.Count == 0)
        {
            return;
        }

        // A square on its point is as wide as its diagonal.
        double width = flow.Sizes.PictogramMm * Math.Sqrt(2);
        flow.FindRoom(width, width);
        if (flow.Region.Edges(flow.Y, flow.Y + width) is not { } free)
        {
            flow.Y += width;
            flow.Overflows(width);
            return;
        }

        double x = free.Left;
        double top = flow.Y;
        double right = free.Left;
        foreach (string code in Codes)
        {
            // Pictures stand side by side while text still finds half the width beside them, else below each other.
            if (x > free.Left && x + width > free.Left + ((free.Right - free.Left) / 2))
            {
                x = free.Left;
                top += width;
                if (
                    flow.Region.IsRound
                    && !(flow.Region.Edges(top, top + width) is { } below && below.Left <= x && x + width <= below.Right)
                )
                {
                    flow.Overflows(width);
                }
            }

            flow.PlaceSymbol(code, x, top, width, code);
            x += width;
            right = Math.Max(right, x);
        }

        flow.Overflows(right - free.Right);
        if (HasTextBelow || !flow.Region.IsRound && free.Right - right - TextGapMm < LeastRoomEm * flow.Sizes.TypeSizeMm)
        {
            flow.Y = top + width + TextGapMm;
            return;
        }

        flow.Region.FloatAtTopLeft(right + TextGapMm, top + width);
    }
}
