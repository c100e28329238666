namespace Chandlery.Intake.Pages;

/// <summary>A rectangle on a page; millimetres from the page's top left corner.</summary>
/// <param name="Left">Left edge.</param>
/// <param name="Top">Upper edge.</param>
/// <param name="Right">Right edge.</param>
/// <param name="Bottom">Lower edge.</param>
public readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Width, millimetres.</summary>
    public double Width => Right - Left;

    /// <summary>Height, millimetres.</summary>
    public double Height => Bottom - Top;

    /// <summary>Middle between left and right.</summary>
    public double CentreX => (Left + Right) / 2;

    /// <summary>Middle between top and bottom.</summary>
    public double CentreY => (Top + Bottom) / 2;

    /// <summary>True when the two have a part in common.</summary>
    public bool Meets(Box other) => Left < other.Right && Right > other.Left && Top < other.Bottom && Bottom > other.Top;

    /// <summary>The smallest rectangle around both.</summary>
    public Box Around(Box other) =>
        new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    /// <summary>The smallest rectangle around all; there must be at least one.</summary>
    public static Box Around(IEnumerable<Box> boxes) => boxes.Aggregate((a, b) => a.Around(b));
}
