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

    /// <summary>The smallest rectangle around both.</summary>
    public Box Around(Box other) =>
        new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    /// <summary>The smallest rectangle around all; there must be at least one.</summary>
    public static Box Around(IEnumerable<Box> boxes) => boxes.Aggregate((a, b) => a.Around(b));
}

/// <summary>A word with its place.</summary>
/// <param name="Text">Its letters, with ligatures and odd hyphens made plain.</param>
/// <param name="Box">Where it stands: from the baseline up by its type size's ascent.</param>
/// <param name="TypeSize">Type size, millimetres.</param>
public sealed record Word(string Text, Box Box, double TypeSize);

/// <summary>A thin straight line, level or upright.</summary>
/// <param name="Page">Page number.</param>
/// <param name="Box">Where it runs.</param>
public sealed record RuledLine(int Page, Box Box)
{
    /// <summary>True when it runs from left to right.</summary>
    public bool IsLevel => Box.Width >= Box.Height;
}

/// <summary>A page as words and ruled lines.</summary>
/// <param name="Number">Page number, from 1.</param>
/// <param name="WidthMm">Width.</param>
/// <param name="HeightMm">Height.</param>
/// <param name="Words">Words, in no order that means anything.</param>
/// <param name="Rules">Ruled lines.</param>
public sealed record SheetPage(int Number, double WidthMm, double HeightMm, IReadOnlyList<Word> Words, IReadOnlyList<RuledLine> Rules);
