using Chandlery.Paper.Layout;

namespace Chandlery.Paper.Blocks;

/// <summary>Empty room.</summary>
/// <param name="Size">Height as a multiple of the base type size.</param>
public sealed record Gap(double Size) : Block
{
    internal static readonly BlockKind Kind = new("gap", (element, reading) => new Gap(reading.Number(element, "size", 0.5)));

    /// <inheritdoc/>
    internal override bool LeadsUp => true;

    /// <inheritdoc/>
    internal override void Lay(Flow flow) => flow.Y += (Size * flow.Sizes.TypeSizeMm) + flow.Sizes.SpareGapMm;
}
