using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Wording;

/// <summary>Finds the numbered sections of a safety data sheet. Old sheets give composition and hazards each other's number: the title decides.</summary>
internal sealed partial class Sections
{
    private const int Last = 16;
    private const int Hazards = 2;
    private const int Composition = 3;
    private const int MostLinesOfTitle = 2;
    private const int LongestTitlePart = 30;
    private readonly Dictionary<int, List<TextLine>> bySection = [];
    private readonly Dictionary<int, int> printedNumber = [];
    private readonly List<TextLine> front = [];

    private Sections() { }

    /// <summary>How many sections were found.</summary>
    public int Count => bySection.Count;

    /// <summary>Lines above the first section's heading.</summary>
    public IReadOnlyList<TextLine> Front => front;

    /// <summary>Lines of a section without its heading; empty when the sheet lacks it.</summary>
    public IReadOnlyList<TextLine> this[int number] => bySection.GetValueOrDefault(number) ?? [];

    /// <summary>Lines of a subsection, such as 2.1, without its heading; the whole section when it has no such heading.</summary>
    public IReadOnlyList<TextLine> Sub(int number, int sub)
    {
        IReadOnlyList<TextLine> all = this[number];
        int printed = printedNumber.GetValueOrDefault(number);
        int from = Enumerable.Range(0, all.Count).FirstOrDefault(i => SubOf(all[i].Text) == (printed, sub), -1);
        if (from < 0)
        {
            return all;
        }

        int to = Enumerable
            .Range(from + 1, all.Count - from - 1)
            .FirstOrDefault(i => SubOf(all[i].Text) is { } s && s.Section == printed && s.Sub > sub, all.Count);
        return [.. all.Skip(from + 1).Take(to - from - 1)];
    }

    /// <summary>Parts lines into sections; a heading counts only when its number follows the ones before.</summary>
    public static Sections Of(IReadOnlyList<TextLine> lines, SheetWording wording)
    {
        var sections = new Sections();
        int current = 0;
        int currentMeant = 0;
        for (int i = 0; i < lines.Count; i++)
        {
            TextLine line = lines[i];
            string next = i + 1 < lines.Count ? lines[i + 1].Text : "";
            SectionHeading? heading = HeadingOf(line.Text, next, wording);
            if (heading is { } h && h.Printed > current && h.Printed <= Last)
            {
                current = h.Printed;
                currentMeant = h.Meant;
                sections.bySection[h.Meant] = [];
                sections.printedNumber[h.Meant] = h.Printed;
                i += RestOfTitle(lines, i, wording.SectionTitles.GetValueOrDefault(h.Meant) ?? []);
            }
            else if (current > 0 && heading?.Printed != current)
            {
                sections.bySection[currentMeant].Add(line);
            }
            else if (current == 0)
            {
                sections.front.Add(line);
            }
        }

        return sections;
    }

    // How many lines below a heading hold the rest of its title.
    private static int RestOfTitle(IReadOnlyList<TextLine> lines, int at, IReadOnlyList<string> titles)
    {
        string plain = Phrase.Plain(lines[at].Text);
        string joined = lines[at].Text;
        for (int more = 1; more <= MostLinesOfTitle && at + more < lines.Count && lines[at + more].IsBeside(lines[at]); more++)
        {
            joined += " " + lines[at + more].Text;
            string whole = Phrase.Plain(joined);
            if (
                titles.Any(t =>
                    whole.EndsWith(t, StringComparison.Ordinal)
                    && !plain.EndsWith(t, StringComparison.Ordinal)
                    && t.Length > LongestTitlePart
                )
            )
            {
                return more;
            }
        }

        return 0;
    }

    /// <summary>True when the text is the heading of a section.</summary>
    public static bool IsHeading(string text, SheetWording wording) => HeadingOf(text, "", wording) is not null;

    // A heading is a number with a title that is known; the word for "section" alone begins sentences too ("section 16 has ...").
    private static SectionHeading? HeadingOf(string text, string next, SheetWording wording)
    {
        if (text.Length > 160)
        {
            return null;
        }

        string plain = Phrase.Plain(text);
        foreach (string word in wording.SectionWords)
        {
            if (
                plain.StartsWith(word + " ", StringComparison.Ordinal)
                && char.IsUpper(text.TrimStart()[0])
                && Leading().Match(plain[(word.Length + 1)..]) is { Success: true } worded
            )
            {
                string title = plain[(word.Length + 1 + worded.Length)..].Trim();
                int number = Number(worded);
                return Meant(number, title, wording) is { } meant ? new SectionHeading(number, meant)
                    : title.Length == 0 ? new SectionHeading(number, Meant(number, Phrase.Plain(next), wording) ?? number)
                    : title.Length > 3 && IsTitleLike(text) ? new SectionHeading(number, number)
                    : null;
            }
        }

        Match bare = Leading().Match(plain);
        return bare.Success && Meant(Number(bare), plain[bare.Length..].Trim(), wording) is { } found
            ? new SectionHeading(Number(bare), found)
            : null;
    }

    private static int Number(Match match) => int.Parse(match.Groups["n"].Value, CultureInfo.InvariantCulture);

    // The section that the title means: its own number's, or composition and hazards changed places.
    private static int? Meant(int number, string title, SheetWording wording)
    {
        int[] candidates = number is Hazards or Composition ? [number, Hazards + Composition - number] : [number];
        foreach (int candidate in candidates)
        {
            if (
                wording.SectionTitles.TryGetValue(candidate, out IReadOnlyList<string>? titles)
                && titles.Any(t => title.StartsWith(t, StringComparison.Ordinal) || IsStartOf(title, t))
            )
            {
                return candidate;
            }
        }

        return null;
    }

    // A title that is wrapped or cut short.
    private static bool IsStartOf(string title, string known) => title.Length >= 9 && known.StartsWith(title, StringComparison.Ordinal);

    private static bool IsTitleLike(string text) => !text.TrimEnd().EndsWith('.') && text.Split(' ').Length < 14;

    private static (int Section, int Sub)? SubOf(string text) =>
        Subsection().Match(text) is { Success: true } m
            ? (int.Parse(m.Groups["n"].Value, CultureInfo.InvariantCulture), int.Parse(m.Groups["s"].Value, CultureInfo.InvariantCulture))
            : null;

    /// <summary>A section's heading.</summary>
    /// <param name="Printed">Its number.</param>
    /// <param name="Meant">The section of today's order that it is.</param>
    private readonly record struct SectionHeading(int Printed, int Meant);

    [GeneratedRegex(@"^(?<n>[0-9]{1,2})(?![0-9.,/-][0-9])\s*[-\u2013)]?\s*")]
    private static partial Regex Leading();

    [GeneratedRegex(@"^(?<n>[0-9]{1,2})\.(?<s>[0-9])\.?(?:\s+\p{L}|\s*$)")]
    private static partial Regex Subsection();
}
