using System.Text.RegularExpressions;

namespace Chandlery.Core.Law;

/// <summary>Words of our own texts that are others in the places of an edition: drafts for draughts.</summary>
/// <param name="Written">What is written there, by the word of our texts, both in small letters.</param>
public sealed record LocalWords(IReadOnlyDictionary<string, string> Written)
{
    /// <summary>No word is another.</summary>
    public static LocalWords None { get; } = new(new Dictionary<string, string>());

    /// <summary>A text as it is written there; marks such as <c>{colour}</c> stay, and so does a capital at the beginning of a word.</summary>
    public string In(string text)
    {
        foreach ((string word, string there) in Written)
        {
            text = Regex.Replace(
                text,
                $@"(?<![\w{{]){Regex.Escape(word)}(?![\w}}])",
                m => char.IsUpper(m.Value[0]) ? char.ToUpperInvariant(there[0]) + there[1..] : there,
                RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
            );
        }

        return text;
    }
}
