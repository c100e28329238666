namespace Chandlery.Paper.Designs;

/// <summary>A rectangle on the page, millimetres.</summary>
/// <param name="X">Left.</param>
/// <param name="Y">Top.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    /// <summary>Right edge.</summary>
    public double Right => X + Width;

    /// <summary>Lower edge.</summary>
    public double Bottom => Y + Height;

    /// <summary>Middle from left to right.</summary>
    public double CentreX => X + (Width / 2);

    /// <summary>Middle from top to bottom.</summary>
    public double CentreY => Y + (Height / 2);

    /// <summary>True when another box lies whole inside.</summary>
    public bool Holds(Box other) => other.X >= X && other.Right <= Right && other.Y >= Y && other.Bottom <= Bottom;

    /// <summary>The same box grown on all sides.</summary>
    public Box Grown(double byMm) => new(X - byMm, Y - byMm, Width + (2 * byMm), Height + (2 * byMm));
}
