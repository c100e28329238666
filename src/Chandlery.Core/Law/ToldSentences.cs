using System.Text.RegularExpressions;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>
/// What the program puts together in English, told in another language. A sentence is known by its English text, with {0}, {1}... for
/// names and figures; clauses in brackets behind it are told word by word.
/// </summary>
public sealed partial class ToldSentences
{
    private readonly IReadOnlyDictionary<string, string> whole;
    private readonly IReadOnlyList<(Regex Pattern, string Told)> patterns;
    private readonly IReadOnlyList<(Regex Word, string Told)> cited;

    /// <summary>The sentences of a language.</summary>
    /// <param name="sentences">What each is told as, by its English text.</param>
    /// <param name="citedWords">Words of citations by the English ones; the longest count first.</param>
    public ToldSentences(IReadOnlyDictionary<string, string> sentences, IReadOnlyDictionary<string, string> citedWords)
    {
        whole = sentences;

        // The more of a sentence is fixed, the surer it is meant.
        patterns =
        [
            .. sentences
                .Where(s => Hole().IsMatch(s.Key))
                .OrderByDescending(s => Hole().Replace(s.Key, "").Length)
                .Select(s => (PatternOf(s.Key), s.Value)),
        ];
        cited =
        [
            .. citedWords
                .OrderByDescending(w => w.Key.Length)
                .Select(w => (new Regex($@"(?<![\w.]){Regex.Escape(w.Key)}(?!\w)", RegexOptions.CultureInvariant), w.Value)),
        ];
    }

    /// <summary>Tells nothing.</summary>
    public static ToldSentences None { get; } = new(new Dictionary<string, string>(), new Dictionary<string, string>());

    /// <summary>A sentence or several, as the language tells them; null when a part of them is not known.</summary>
    /// <param name="text">The English text.</param>
    /// <param name="figures">How the language writes figures.</param>
    public string? Find(string text, FigureFormat figures) =>
        whole.GetValueOrDefault(text) ?? ByPattern(text, figures) ?? BeforeClause(text, figures) ?? BySentence(text, figures);

    /// <summary>A citation with its words in the language; names of acts stay.</summary>
    public string Cited(string clause) =>
        whole.GetValueOrDefault(clause) ?? cited.Aggregate(clause, (text, word) => word.Word.Replace(text, word.Told));

    private string? ByPattern(string text, FigureFormat figures)
    {
        foreach ((Regex pattern, string told) in patterns)
        {
            if (pattern.Match(text) is { Success: true } found && Parts(found, figures) is { } parts)
            {
                return Hole().Replace(told, hole => parts[hole.Value]);
            }
        }

        return null;
    }

    // A name or figure stays, what is a sentence must be known: else the pattern has taken too much.
    private Dictionary<string, string>? Parts(Match found, FigureFormat figures)
    {
        var parts = new Dictionary<string, string>();
        foreach (Group group in found.Groups.Values.Skip(1))
        {
            string? told = Find(group.Value, figures) ?? (Sentences().IsMatch(group.Value) ? null : Figure(group.Value, figures));
            if (told is null)
            {
                return null;
            }

            parts[$"{{{group.Name[1..]}}}"] = told;
        }

        return parts;
    }

    private string? BeforeClause(string text, FigureFormat figures) =>
        Clause().Match(text) is { Success: true, Index: > 0 } clause && Find(text[..clause.Index], figures) is { } told
            ? $"{told} ({Cited(clause.Groups[1].Value)})"
            : null;

    private string? BySentence(string text, FigureFormat figures)
    {
        foreach (Match end in Sentences().Matches(text).Reverse())
        {
            if (Find(text[..(end.Index + 1)], figures) is { } first && Find(text[(end.Index + 2)..], figures) is { } rest)
            {
                return $"{first} {rest}";
            }
        }

        return null;
    }

    private static string Figure(string text, FigureFormat figures) => Point().Replace(text, $"{figures.DecimalMark}");

    private static Regex PatternOf(string sentence)
    {
        string[] pieces = Hole().Split(sentence);
        string[] holes = [.. Hole().Matches(sentence).Select(h => h.Value[1..^1])];
        return new Regex(
            "^" + string.Concat(pieces.Select((p, i) => Regex.Escape(p) + (i < holes.Length ? $"(?<p{holes[i]}>.+?)" : ""))) + "$",
            RegexOptions.CultureInvariant | RegexOptions.Singleline
        );
    }

    [GeneratedRegex(@"\{[0-9]+\}")]
    private static partial Regex Hole();

    // "Flam. Liq. 3" is a code, no end of a sentence.
    [GeneratedRegex(@"[.?!] (?=\p{Lu}\p{L}* \p{L})")]
    private static partial Regex Sentences();

    [GeneratedRegex(@" \(([^()]*(?:\([^()]*\)[^()]*)*)\)$")]
    private static partial Regex Clause();

    // A figure that stands for itself: not a clause such as 3.2.1, nor a part of a name.
    [GeneratedRegex(@"(?<=^[^\p{L}]*(?<![0-9.])[0-9]+)\.(?=[0-9]+(?![0-9.]))")]
    private static partial Regex Point();
}
