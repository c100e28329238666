using System.Text;

namespace Chandlery.Core.Law;

/// <summary>Where long words of a language may be broken at a line's end. A word that is not listed stays whole, and so do names and codes.</summary>
public sealed class WordBreaks
{
    /// <summary>
    /// The soft hyphen (Unicode U+00AD): a place where a word may be broken, shown only where it is (ISO 32000-1, 14.8.2.2.3 asks the
    /// same of a hyphen at a line's end).
    /// </summary>
    public const char Soft = '\u00AD';

    /// <summary>No part of a broken word is shorter, in letters.</summary>
    public const int ShortestPart = 3;

    private readonly Dictionary<string, int[]> places = new(StringComparer.OrdinalIgnoreCase);
    private readonly int shortest = int.MaxValue;

    /// <summary>Takes the words.</summary>
    /// <param name="words">Words with a hyphen wherever they may be broken.</param>
    public WordBreaks(IEnumerable<string> words)
    {
        foreach (string word in words)
        {
            string[] parts = word.Split('-');
            string whole = string.Concat(parts);
            int at = 0;
            places[whole] = [.. parts.SkipLast(1).Select(p => at += p.Length)];
            shortest = Math.Min(shortest, whole.Length);
        }
    }

    /// <summary>No word is broken.</summary>
    public static WordBreaks None { get; } = new([]);

    /// <summary>The words that may be broken, without marks.</summary>
    public IReadOnlyCollection<string> Words => places.Keys;

    /// <summary>A text with the soft hyphen wherever one of its words may be broken; without those signs it is the same text.</summary>
    public string In(string text)
    {
        StringBuilder? marked = null;
        int copied = 0;
        for (int start = 0; start < text.Length; )
        {
            int end = start;
            while (end < text.Length && char.IsLetter(text[end]))
            {
                end++;
            }

            if (end - start >= shortest && StandsAlone(text, start, end) && PlacesOf(text.AsSpan(start, end - start)) is { } found)
            {
                marked ??= new StringBuilder(text.Length + 8);
                foreach (int place in found)
                {
                    marked.Append(text, copied, start + place - copied).Append(Soft);
                    copied = start + place;
                }
            }

            start = end + 1;
        }

        return marked is null ? text : marked.Append(text, copied, text.Length - copied).ToString();
    }

    private int[]? PlacesOf(ReadOnlySpan<char> word) =>
        places.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(word, out int[]? found) ? found : null;

    // Parts of a hyphenated name or a code are no words.
    private static bool StandsAlone(string text, int start, int end) =>
        (start == 0 || !Joins(text[start - 1])) && (end == text.Length || !Joins(text[end]));

    private static bool Joins(char sign) => sign is '-' or '\'' or '’' || char.IsAsciiDigit(sign);
}
