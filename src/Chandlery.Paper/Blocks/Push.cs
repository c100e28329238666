using Chandlery.Paper.Layout;

namespace Chandlery.Paper.Blocks;

/// <summary>Sends what follows to the foot of the label or column.</summary>
public sealed record Push : Block
{
    internal static readonly BlockKind Kind = new("push", (_, _) => new Push());

    /// <inheritdoc/>
    internal override void Lay(Flow flow) => flow.Push();
}
