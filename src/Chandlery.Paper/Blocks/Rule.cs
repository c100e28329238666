using Chandlery.Paper.Layout;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Blocks;

/// <summary>A line from edge to edge.</summary>
/// <param name="WidthMm">How thick it is.</param>
/// <param name="Ink">Its colour.</param>
public sealed record Rule(double WidthMm, Ink Ink) : Block
{
    internal static readonly BlockKind Kind = new(
        "rule",
        (element, _) =>
            ((string?)element.Attribute("weight") == "heavy" ? new Rule(HeavyMm, Ink.Black) : new Rule(ThinMm, Ink.Grey)) with
            {
                StandsOut = (string?)element.Attribute("out") == "yes",
            }
    );

    private const double ThinMm = 0.2;
    private const double HeavyMm = 0.4;

    /// <summary>Whether it begins left of the text, at the margin.</summary>
    public bool StandsOut { get; init; }

    /// <inheritdoc/>
    internal override int Stretches => 1;

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        double gap = (flow.Sizes.TypeSizeMm * 0.4) + (flow.Sizes.SpareRowMm / 2);
        flow.Y += gap;
        if (flow.Region.Edges(flow.Y, flow.Y) is { } free)
        {
            flow.PlaceLine((StandsOut ? free.Left - flow.Sizes.InsetMm : free.Left, free.Right), Ink, WidthMm);
        }

        flow.Y += gap;
    }
}
