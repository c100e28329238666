using Chandlery.Paper.Layout;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Blocks;

/// <summary>A thin line from edge to edge.</summary>
public sealed record Rule : Block
{
    internal static readonly BlockKind Kind = new("rule", (_, _) => new Rule());

    /// <inheritdoc/>
    internal override void Lay(Flow flow)
    {
        double gap = flow.Sizes.TypeSizeMm * 0.4;
        flow.Y += gap;
        if (flow.Region.Edges(flow.Y, flow.Y) is { } free)
        {
            flow.PlaceLine(free, Ink.Grey);
        }

        flow.Y += gap;
    }
}
