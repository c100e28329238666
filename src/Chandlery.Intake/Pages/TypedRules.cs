using System.Text.RegularExpressions;

namespace Chandlery.Intake.Pages;

/// <summary>Ruled lines that are typed: bars under each other, and rows of hyphens, as typewriters and line printers draw tables.</summary>
internal static partial class TypedRules
{
    private const double SameBarMm = 0.5;
    private const int FewestBars = 3;
    private const double OverOfTypeSize = 0.3;

    /// <summary>True for a bar between two columns.</summary>
    public static bool IsBar(string letter) => letter is "|" or "\u00a6" or "\u2502";

    /// <summary>The words without typed lines, and these as lines.</summary>
    /// <param name="page">The page's number.</param>
    /// <param name="words">Its words; a bar is a word of its own.</param>
    public static (IReadOnlyList<Word> Words, IReadOnlyList<RuledLine> Rules) Of(int page, IReadOnlyList<Word> words)
    {
        List<Word> bars =
        [
            .. words
                .Where(w => IsBar(w.Text))
                .GroupBy(w => Math.Round(w.Box.CentreX / SameBarMm))
                .Where(g => g.Count() >= FewestBars)
                .SelectMany(g => g),
        ];
        List<Word> level = [.. words.Where(w => Level().IsMatch(w.Text))];
        if (bars.Count + level.Count == 0)
        {
            return (words, []);
        }

        HashSet<Word> typed = [.. bars, .. level];
        return (
            [.. words.Where(w => !typed.Contains(w))],
            [.. bars.Select(b => new RuledLine(page, Upright(b))), .. level.Select(l => new RuledLine(page, Middle(l)))]
        );
    }

    // A bar reaches to the bars above and below it.
    private static Box Upright(Word bar) =>
        new(
            bar.Box.CentreX,
            bar.Box.Top - (OverOfTypeSize * bar.TypeSize),
            bar.Box.CentreX,
            bar.Box.Bottom + (OverOfTypeSize * bar.TypeSize)
        );

    private static Box Middle(Word line) => line.Box with { Top = line.Box.CentreY, Bottom = line.Box.CentreY };

    [GeneratedRegex(@"^\+?[-=_\u2500\u2013\u2014]{6,}(?:\+[-=_\u2500\u2013\u2014]*)*$|^\+(?:[-=]+\+)+$")]
    private static partial Regex Level();
}
