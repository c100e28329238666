namespace Chandlery.Core.Law;

/// <summary>By what the height of the quantity's figures is told.</summary>
public enum FigureMeasure
{
    /// <summary>The quantity itself, grams.</summary>
    Grams,

    /// <summary>The main panel, square inches.</summary>
    SquareInches,

    /// <summary>The main panel, square centimetres.</summary>
    SquareCentimetres,

    /// <summary>The package's largest dimension, millimetres.</summary>
    LargestMm,
}
