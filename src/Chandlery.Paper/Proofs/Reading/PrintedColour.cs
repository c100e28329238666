namespace Chandlery.Paper.Proofs.Reading;

/// <summary>A colour as a PDF states it, shares of 1.</summary>
/// <param name="Red">Red.</param>
/// <param name="Green">Green.</param>
/// <param name="Blue">Blue.</param>
internal readonly record struct PrintedColour(double Red, double Green, double Blue)
{
    /// <summary>What is drawn where nothing else was said (ISO 32000-1, 8.6.5.4).</summary>
    public static PrintedColour Black => default;

    /// <summary>Whether it is black.</summary>
    public bool IsBlack => Red + Green + Blue < 0.01;

    /// <summary>Whether it is white.</summary>
    public bool IsWhite => Red + Green + Blue > 2.99;

    /// <summary>Whether it is the red of a pictogram's frame.</summary>
    public bool IsRed => Red > 0.8 && Green < 0.2 && Blue < 0.2;
}
