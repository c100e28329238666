namespace Chandlery.Intake.Pictures;

/// <summary>A part of a picture, in pixels from its top left corner.</summary>
/// <param name="Left">First column.</param>
/// <param name="Top">First row.</param>
/// <param name="Right">The column behind the last one.</param>
/// <param name="Bottom">The row behind the last one.</param>
internal readonly record struct PixelBox(int Left, int Top, int Right, int Bottom)
{
    public int Width => Right - Left;

    public int Height => Bottom - Top;
}
