namespace Chandlery.Paper.Drawing;

/// <summary>What the samples of a dot are, numbered as in a PNG's header (PNG specification, 11.2.2).</summary>
internal enum PngColours : byte
{
    /// <summary>One sample, from black to white.</summary>
    Grey = 0,

    /// <summary>Red, green and blue.</summary>
    Colour = 2,
}
