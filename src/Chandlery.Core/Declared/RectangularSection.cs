using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>The cross-section of a rectangular vessel.</summary>
/// <param name="Length">One side, by habit the long one.</param>
/// <param name="Width">The other side.</param>
public sealed record RectangularSection(Millimetres Length, Millimetres Width) : CrossSection
{
    /// <summary>The longer side.</summary>
    public Millimetres LongSide => new(Math.Max(Length.Value, Width.Value));

    /// <inheritdoc/>
    public override Millimetres Perimeter => new(2 * (Length.Value + Width.Value));

    /// <inheritdoc/>
    public override double AreaSquareMillimetres => Length.Value * Width.Value;

    /// <inheritdoc/>
    public override Millimetres Across => new(Math.Min(Length.Value, Width.Value));

    /// <inheritdoc/>
    public override Millimetres LongestAcross => LongSide;
}
