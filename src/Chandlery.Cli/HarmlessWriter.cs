using System.Text;

namespace Chandlery.Cli;

/// <summary>
/// What a terminal is shown: names come from files of others, and what in them steers a terminal or turns the direction of writing is
/// written as a mark. Ends of lines and tabs stay, and so do the program's own colours, which no file can write. Lines that are wider
/// than a terminal are broken at blanks, and what follows is set in as the line's beginning is.
/// </summary>
/// <param name="inner">The terminal.</param>
/// <param name="width">Its width in letters; null where lines are left as they are, because another program may read them.</param>
internal sealed class HarmlessWriter(TextWriter inner, int? width = null) : TextWriter
{
    private readonly StringBuilder line = new();

    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value) => Write([value]);

    /// <inheritdoc/>
    public override void Write(string? value) => Write(value.AsSpan());

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(buffer.AsSpan(index, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<char> buffer)
    {
        if (width is not { } room)
        {
            inner.Write(Clean(buffer));
            return;
        }

        while (buffer.IndexOf('\n') is var end && end >= 0)
        {
            line.Append(buffer[..end]);
            WriteBroken(line.ToString(), room);
            line.Clear();
            buffer = buffer[(end + 1)..];
        }

        line.Append(buffer);
    }

    /// <inheritdoc/>
    public override void Flush()
    {
        inner.Write(Clean(line.ToString()));
        line.Clear();
        inner.Flush();
    }

    /// <summary>The text as a terminal may have it.</summary>
    public static string Clean(ReadOnlySpan<char> text)
    {
        var clean = new StringBuilder(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            if (Ink.ColourAt(text[i..]) is { } colour)
            {
                clean.Append(colour);
                i += Ink.MarkLength - 1;
            }
            else
            {
                bool stays = text[i] is '\n' or '\t' || (text[i] == '\r' && i + 1 < text.Length && text[i + 1] == '\n');
                clean.Append(stays ? text[i] : TextTable.Harmless(text[i]));
            }
        }

        return clean.ToString();
    }

    private void WriteBroken(string whole, int room)
    {
        string text = whole.TrimEnd('\r');
        string inset = Inset(text, room);
        var rest = text.AsSpan();
        string before = "";
        while (BreakIn(rest, room - before.Length) is { } at)
        {
            inner.WriteLine(before + Clean(rest[..at].TrimEnd(' ')));
            rest = rest[at..].TrimStart(' ');
            before = inset;
        }

        inner.WriteLine(before + Clean(rest));
    }

    // Later lines stand under the text of the first, behind the sign of an item.
    private static string Inset(string text, int room)
    {
        int blanks = text.Length - text.TrimStart(' ').Length;
        int item = text.AsSpan(blanks).StartsWith("- ") ? 2 : 0;
        return new string(' ', Math.Min(blanks + item, room / 2));
    }

    // Where a line must be broken so that it has room: behind its last blank, or null where it fits or has no blank to break it at.
    private static int? BreakIn(ReadOnlySpan<char> text, int room)
    {
        int shown = 0;
        int? blank = null;
        bool hasBegun = false;
        for (int i = 0; i < text.Length; i++)
        {
            if (Ink.ColourAt(text[i..]) is not null)
            {
                i += Ink.MarkLength - 1;
                continue;
            }

            if (text[i] == ' ' && hasBegun)
            {
                blank = i + 1;
            }

            hasBegun |= text[i] != ' ';
            shown++;
            if (shown > room && text[i] != ' ' && blank is not null)
            {
                return blank;
            }
        }

        return null;
    }
}
