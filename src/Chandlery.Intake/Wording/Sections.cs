using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Wording;

/// <summary>Finds the numbered sections of a safety data sheet.</summary>
internal sealed partial class Sections
{
    private const int Last = 16;
    private readonly Dictionary<int, List<TextLine>> bySection = [];

    private Sections() { }

    /// <summary>How many sections were found.</summary>
    public int Count => bySection.Count;

    /// <summary>Lines of a section without its heading; empty when the sheet lacks it.</summary>
    public IReadOnlyList<TextLine> this[int number] => bySection.GetValueOrDefault(number) ?? [];

    /// <summary>Lines of a subsection, such as 2.1, without its heading; the whole section when it has no such heading.</summary>
    public IReadOnlyList<TextLine> Sub(int number, int sub)
    {
        IReadOnlyList<TextLine> all = this[number];
        int from = Find(sub);
        if (from < 0)
        {
            return all;
        }

        int to = Enumerable
            .Range(from + 1, all.Count - from - 1)
            .FirstOrDefault(i => SubOf(all[i].Text) is { } s && s.Section == number && s.Sub > sub, all.Count);
        return [.. all.Skip(from + 1).Take(to - from - 1)];

        int Find(int wanted) => Enumerable.Range(0, all.Count).FirstOrDefault(i => SubOf(all[i].Text) == (number, wanted), -1);
    }

    /// <summary>Parts lines into sections; a heading counts only when its number follows the ones before.</summary>
    public static Sections Of(IReadOnlyList<TextLine> lines, SheetWording wording)
    {
        var sections = new Sections();
        int current = 0;
        foreach (TextLine line in lines)
        {
            if (NumberOf(line.Text, wording) is { } number && number > current && number <= Last)
            {
                current = number;
                sections.bySection[number] = [];
            }
            else if (current > 0)
            {
                sections.bySection[current].Add(line);
            }
        }

        return sections;
    }

    private static int? NumberOf(string text, SheetWording wording)
    {
        string plain = Phrase.Plain(text);
        foreach (string word in wording.SectionWords)
        {
            if (
                plain.StartsWith(word + " ", StringComparison.Ordinal)
                && Leading().Match(plain[(word.Length + 1)..]) is { Success: true } worded
            )
            {
                return int.Parse(worded.Groups["n"].Value, CultureInfo.InvariantCulture);
            }
        }

        Match bare = Leading().Match(plain);
        if (!bare.Success)
        {
            return null;
        }

        int number = int.Parse(bare.Groups["n"].Value, CultureInfo.InvariantCulture);
        string title = plain[bare.Length..].Trim();
        return
            wording.SectionTitles.TryGetValue(number, out IReadOnlyList<string>? titles)
            && titles.Any(t => title.StartsWith(t, StringComparison.Ordinal))
            ? number
            : null;
    }

    private static (int Section, int Sub)? SubOf(string text) =>
        Subsection().Match(text) is { Success: true } m
            ? (int.Parse(m.Groups["n"].Value, CultureInfo.InvariantCulture), int.Parse(m.Groups["s"].Value, CultureInfo.InvariantCulture))
            : null;

    [GeneratedRegex(@"^(?<n>[0-9]{1,2})(?![0-9.,/-][0-9])\s*[-\u2013)]?\s*")]
    private static partial Regex Leading();

    [GeneratedRegex(@"^(?<n>[0-9]{1,2})\.(?<s>[0-9])\.?\s+\p{L}")]
    private static partial Regex Subsection();
}
