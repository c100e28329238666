using Chandlery.Paper.Layout;

namespace Chandlery.Paper.Blocks;

/// <summary>Where a column had best begin, when there are several; it takes no room.</summary>
public sealed record ColumnStart : Block
{
    internal static readonly BlockKind Kind = new("column", (_, _) => new ColumnStart());

    /// <inheritdoc/>
    internal override void Lay(Flow flow) { }
}
