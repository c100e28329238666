using System.Text.RegularExpressions;

namespace Chandlery.Core.Law;

/// <summary>The law's blanks: what stands in angle brackets is an instruction to the supplier, who fills it in or leaves it out.</summary>
internal static partial class StatementBlanks
{
    private const string Closing = ".!?:";

    /// <summary>The law's text as a sentence with its blanks left out.</summary>
    public static string LeftOut(string text)
    {
        // Some sentences of the act lack the full stop, and some have a space before it; on a label one sentence follows another.
        string sentence = Blank().Replace(text, " ").Replace(" .", ".", StringComparison.Ordinal).Trim();
        return Closing.Contains(sentence[^1], StringComparison.Ordinal) ? sentence : sentence + ".";
    }

    [GeneratedRegex(@"\s*(?:<[^<>]*>\s*)+")]
    private static partial Regex Blank();
}
