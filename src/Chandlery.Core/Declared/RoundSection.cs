using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>The cross-section of a round vessel.</summary>
/// <param name="Diameter">Its diameter.</param>
public sealed record RoundSection(Millimetres Diameter) : CrossSection
{
    /// <inheritdoc/>
    public override Millimetres Perimeter => new(Math.PI * Diameter.Value);

    /// <inheritdoc/>
    public override double AreaSquareMillimetres => Math.PI * Diameter.Value * Diameter.Value / 4;

    /// <inheritdoc/>
    public override Millimetres Across => Diameter;

    /// <inheritdoc/>
    public override Millimetres LongestAcross => Diameter;
}
