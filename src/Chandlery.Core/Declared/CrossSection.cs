using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>The level cross-section of a vessel: a <see cref="RoundSection"/> or a <see cref="RectangularSection"/>.</summary>
public abstract record CrossSection
{
    private protected CrossSection() { }

    /// <summary>Length around it.</summary>
    public abstract Millimetres Perimeter { get; }

    /// <summary>Its area, square millimetres.</summary>
    public abstract double AreaSquareMillimetres { get; }

    /// <summary>The shortest way across its middle.</summary>
    public abstract Millimetres Across { get; }

    /// <summary>The longest way across it; of a rectangle along its longer side, as packages are measured.</summary>
    public abstract Millimetres LongestAcross { get; }
}
