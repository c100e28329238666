namespace Chandlery.Paper.Scenes;

/// <summary>Pixels of sRGB.</summary>
/// <param name="Width">Pixels in a row.</param>
/// <param name="Height">Rows.</param>
/// <param name="Rgb">Three bytes a pixel, row by row from the top left.</param>
public sealed record PixelGrid(int Width, int Height, byte[] Rgb);
