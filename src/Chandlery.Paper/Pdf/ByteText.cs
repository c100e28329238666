namespace Chandlery.Paper.Pdf;

/// <summary>PDF syntax that grows byte by byte.</summary>
/// <param name="room">How many bytes are expected; it grows where more come.</param>
internal sealed class ByteText(int room = 256)
{
    private static readonly long[] Powers = [1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000];

    private byte[] bytes = new byte[room];
    private int length;

    /// <summary>What was written so far.</summary>
    public ReadOnlySpan<byte> Written => bytes.AsSpan(0, length);

    /// <summary>Bytes written so far.</summary>
    public int Length => length;

    /// <summary>Adds ASCII text.</summary>
    public ByteText Put(string ascii)
    {
        Span<byte> room = Room(ascii.Length);
        for (int i = 0; i < ascii.Length; i++)
        {
            room[i] = (byte)ascii[i];
        }

        return this;
    }

    /// <summary>Adds bytes.</summary>
    public ByteText Put(ReadOnlySpan<byte> more)
    {
        more.CopyTo(Room(more.Length));
        return this;
    }

    /// <summary>Adds one byte.</summary>
    public ByteText PutByte(byte one)
    {
        Room(1)[0] = one;
        return this;
    }

    /// <summary>Adds a whole number.</summary>
    public ByteText Put(int value) => Put(value, 0);

    /// <summary>Adds a number and a blank behind it.</summary>
    public ByteText Spaced(double value, int decimals) => Put(value, decimals).PutByte((byte)' ');

    /// <summary>Adds a number (ISO 32000-1, 7.3.3: without exponent).</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Decimals that it is rounded to, 0 to 8; noughts at the end are left out.</param>
    public ByteText Put(double value, int decimals)
    {
        long scaled = (long)Math.Round(value * Powers[decimals]);
        Span<byte> figures = stackalloc byte[24];
        int at = figures.Length;
        ulong rest = (ulong)Math.Abs(scaled);
        bool written = false;
        for (int i = 0; i < decimals; i++)
        {
            byte figure = (byte)(rest % 10);
            rest /= 10;
            written |= figure != 0;
            if (written)
            {
                figures[--at] = (byte)('0' + figure);
            }
        }

        if (written)
        {
            figures[--at] = (byte)'.';
        }

        if (rest > 0 || !written)
        {
            do
            {
                figures[--at] = (byte)('0' + (rest % 10));
                rest /= 10;
            } while (rest > 0);
        }

        if (scaled < 0)
        {
            figures[--at] = (byte)'-';
        }

        return Put(figures[at..]);
    }

    /// <summary>Takes back all that was written.</summary>
    public void Clear() => length = 0;

    private Span<byte> Room(int needed)
    {
        if (length + needed > bytes.Length)
        {
            Array.Resize(ref bytes, Math.Max(2 * bytes.Length, length + needed));
        }

        length += needed;
        return bytes.AsSpan(length - needed, needed);
    }
}
