using System.Text;

namespace Chandlery.Cli;

/// <summary>A command line that is being typed, as a shell takes it apart.</summary>
/// <param name="Words">Whole words before the cursor, without the program's name.</param>
/// <param name="Partial">What is typed of the word at the cursor; empty for none.</param>
/// <param name="Rest">Whole words behind the cursor.</param>
internal sealed record TypedLine(IReadOnlyList<string> Words, string Partial, IReadOnlyList<string> Rest)
{
    /// <summary>Takes a line apart. Blanks in quotes, and behind a backslash where shells have that, belong to a word.</summary>
    /// <param name="line">The line, with the program's name first.</param>
    /// <param name="cursor">Where the cursor stands; behind the line's end where the shell left out the blanks there.</param>
    public static TypedLine Read(string line, int cursor)
    {
        string before = cursor <= line.Length ? line[..Math.Max(0, cursor)] : line + " ";
        List<string> words = Split(before, out string? open);
        string behind = cursor < line.Length ? line[Math.Max(0, cursor)..] : "";
        int next = behind.IndexOf(' ', StringComparison.Ordinal);
        List<string> rest = next < 0 ? [] : Split(behind[next..] + " ", out _);
        return new TypedLine([.. words.Skip(1)], open ?? "", rest);
    }

    /// <summary>Whether anything but the program's name is typed yet.</summary>
    /// <param name="line">The line.</param>
    /// <param name="cursor">Where the cursor stands.</param>
    public static bool IsBegun(string line, int cursor) => cursor > line.Length || line[..Math.Max(0, cursor)].TrimStart().Contains(' ');

    private static List<string> Split(string text, out string? open)
    {
        var words = new List<string>();
        StringBuilder? word = null;
        char quote = '\0';
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            bool escapes = c == '\\' && quote != '\'' && !OperatingSystem.IsWindows() && i + 1 < text.Length;
            if (escapes)
            {
                (word ??= new StringBuilder()).Append(text[++i]);
            }
            else if (quote != '\0' ? c == quote : c is '"' or '\'')
            {
                quote = quote == '\0' ? c : '\0';
                word ??= new StringBuilder();
            }
            else if (quote == '\0' && char.IsWhiteSpace(c))
            {
                if (word is not null)
                {
                    words.Add($"{word}");
                }

                word = null;
            }
            else
            {
                (word ??= new StringBuilder()).Append(c);
            }
        }

        open = word?.ToString();
        return words;
    }
}
