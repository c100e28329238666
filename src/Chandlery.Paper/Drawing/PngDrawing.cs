using System.Numerics;
using Chandlery.Paper.Scenes;
using SkiaSharp;

namespace Chandlery.Paper.Drawing;

/// <summary>Draws a page as PNG that knows its resolution.</summary>
public static class PngDrawing
{
    private const uint White = 0xFFFF_FFFF;

    /// <summary>The PNG's bytes.</summary>
    /// <param name="scene">The page.</param>
    /// <param name="dotsPerInch">Resolution.</param>
    public static byte[] Draw(Scene scene, double dotsPerInch)
    {
        double dotsPerMm = dotsPerInch / PngFile.MmPerInch;
        var info = new SKImageInfo(
            (int)Math.Round(scene.WidthMm * dotsPerMm),
            (int)Math.Round(scene.HeightMm * dotsPerMm),
            SKColorType.Rgba8888,
            SKAlphaType.Opaque
        );
        using SKSurface surface = SKSurface.Create(info);
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale((float)dotsPerMm);
        Canvas.Draw(surface.Canvas, scene);
        using SKImage image = surface.Snapshot();
        using SKPixmap pixels = image.PeekPixels();

        // A card is black on white: one byte a dot instead of three is packed in a third of the time.
        bool isGrey = IsGrey(pixels.GetPixelSpan<uint>());
        return PngFile.Write(
            info.Width,
            info.Height,
            depth: 8,
            isGrey ? PngColours.Grey : PngColours.Colour,
            dotsPerInch,
            packer => WriteRows(pixels.GetPixelSpan<uint>(), info.Width, isGrey, packer)
        );
    }

    // Whether every dot has as much red as green as blue, which are its three lower bytes.
    private static bool IsGrey(ReadOnlySpan<uint> dots)
    {
        const uint UnlikeNeighbours = 0xFFFF;
        int i = 0;
        for (; i <= dots.Length - Vector<uint>.Count; i += Vector<uint>.Count)
        {
            var some = new Vector<uint>(dots[i..]);
            if (((some ^ (some >>> 8)) & new Vector<uint>(UnlikeNeighbours)) != Vector<uint>.Zero)
            {
                return false;
            }
        }

        for (; i < dots.Length; i++)
        {
            if (((dots[i] ^ (dots[i] >> 8)) & UnlikeNeighbours) != 0)
            {
                return false;
            }
        }

        return true;
    }

    private static void WriteRows(ReadOnlySpan<uint> dots, int width, bool isGrey, Stream packer)
    {
        var row = new byte[1 + (width * (isGrey ? 1 : 3))];
        var empty = new byte[row.Length];
        empty.AsSpan().Fill(byte.MaxValue);
        empty[0] = row[0] = PngFile.Unfiltered;
        for (int from = 0; from < dots.Length; from += width)
        {
            ReadOnlySpan<uint> line = dots.Slice(from, width);
            if (!line.ContainsAnyExcept(White))
            {
                packer.Write(empty);
                continue;
            }

            if (isGrey)
            {
                Greys(line, row);
            }
            else
            {
                Colours(line, row);
            }

            packer.Write(row);
        }
    }

    // The lowest byte of each dot, as many at once as the processor takes.
    private static void Greys(ReadOnlySpan<uint> line, byte[] row)
    {
        const uint Lowest = 0xFF;
        int step = Vector<byte>.Count;
        int quarter = Vector<uint>.Count;
        int x = 0;
        for (; x <= line.Length - step; x += step)
        {
            ReadOnlySpan<uint> dots = line.Slice(x, step);
            var lowest = new Vector<uint>(Lowest);
            Vector<ushort> first = Vector.Narrow(new Vector<uint>(dots) & lowest, new Vector<uint>(dots[quarter..]) & lowest);
            Vector<ushort> second = Vector.Narrow(
                new Vector<uint>(dots[(2 * quarter)..]) & lowest,
                new Vector<uint>(dots[(3 * quarter)..]) & lowest
            );
            Vector.Narrow(first, second).CopyTo(row, x + 1);
        }

        for (; x < line.Length; x++)
        {
            row[x + 1] = (byte)line[x];
        }
    }

    private static void Colours(ReadOnlySpan<uint> line, byte[] row)
    {
        for (int x = 0, to = 1; x < line.Length; x++, to += 3)
        {
            uint dot = line[x];
            row[to] = (byte)dot;
            row[to + 1] = (byte)(dot >> 8);
            row[to + 2] = (byte)(dot >> 16);
        }
    }
}
