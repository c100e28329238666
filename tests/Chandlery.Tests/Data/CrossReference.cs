using Chandlery.Yaml;

namespace Chandlery.Tests.Data;

/// <summary>A place in a data file where a code, a name or a field refers to something else.</summary>
/// <param name="File">Path under <c>data/</c>.</param>
/// <param name="Text">The text that refers.</param>
/// <param name="Place">Where it begins.</param>
internal sealed record CrossReference(string File, string Text, TextPlace Place)
{
    /// <summary>The file with one letter of the reference mangled.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="mangled">The reference as it stands in the result.</param>
    public string Mangle(string text, out string mangled)
    {
        string[] lines = text.Split('\n');
        string line = lines[Place.Line - 1];
        int at = line.IndexOf(Text, Math.Max(0, Place.Column - 1), StringComparison.Ordinal);
        mangled = Mangled(Text);
        lines[Place.Line - 1] = line[..at] + mangled + line[(at + Text.Length)..];
        return string.Join('\n', lines);
    }

    // A code gets a letter too many, a word a wrong one: both are what fingers do.
    private static string Mangled(string text)
    {
        if (char.IsAsciiDigit(text[^1]))
        {
            return text + text[^1];
        }

        int middle = text.Length / 2;
        while (middle > 0 && !char.IsAsciiLetter(text[middle]))
        {
            middle--;
        }

        char wrong = text[middle] is 'q' or 'Q' ? 'x' : 'q';
        return text[..middle] + wrong + text[(middle + 1)..];
    }
}
