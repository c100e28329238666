using System.Text;

namespace Chandlery.Cli;

/// <summary>
/// What a terminal is shown: names come from files of others, and what in them steers a terminal or turns the direction of writing is
/// written as a mark. Ends of lines, tabs and the program's own colours stay.
/// </summary>
internal sealed class HarmlessWriter(TextWriter inner) : TextWriter
{
    /// <inheritdoc/>
    public override Encoding Encoding => inner.Encoding;

    /// <inheritdoc/>
    public override void Write(char value) => Write([value]);

    /// <inheritdoc/>
    public override void Write(string? value) => Write(value.AsSpan());

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(buffer.AsSpan(index, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<char> buffer) => inner.Write(Clean(buffer));

    /// <inheritdoc/>
    public override void Flush() => inner.Flush();

    /// <summary>The text as a terminal may have it.</summary>
    public static string Clean(ReadOnlySpan<char> text)
    {
        var clean = new StringBuilder(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            if (OwnSequence(text[i..]) is { } own)
            {
                clean.Append(own);
                i += own.Length - 1;
            }
            else
            {
                bool stays = text[i] is '\n' or '\t' || (text[i] == '\r' && i + 1 < text.Length && text[i + 1] == '\n');
                clean.Append(stays ? text[i] : TextTable.Harmless(text[i]));
            }
        }

        return clean.ToString();
    }

    private static string? OwnSequence(ReadOnlySpan<char> text)
    {
        if (text[0] == '\u001b')
        {
            foreach (string sequence in Ink.Sequences)
            {
                if (text.StartsWith(sequence, StringComparison.Ordinal))
                {
                    return sequence;
                }
            }
        }

        return null;
    }
}
