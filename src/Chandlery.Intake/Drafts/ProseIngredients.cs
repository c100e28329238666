using System.Text;
using System.Text.RegularExpressions;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Reads ingredients that stand in sentences, each with its CAS number: name, numbers, share, classes.</summary>
internal sealed partial class ProseIngredients(SheetWording wording, HazardText hazards, IngredientRows rows)
{
    private const int MostEntries = 300;

    /// <summary>The ingredients; empty when the lines hold no CAS number.</summary>
    public IEnumerable<DraftIngredient> Of(IReadOnlyList<TextLine> lines)
    {
        List<TextLine> own = [.. lines.TakeWhile(l => !Phrase.AnyIn(wording.Lists["tableEnds"], l.Text) || ColumnKind.HasCas(l.Text))];
        (string text, List<int> starts) = Joined(own);
        List<Match> numbers = [.. ColumnKind.CasPattern().Matches(text).Take(MostEntries)];
        int from = numbers.Count == 0 ? 0 : FirstStart(own, starts, numbers[0].Index);
        for (int n = 0; n < numbers.Count; n++)
        {
            int to = n + 1 < numbers.Count ? NextStart(text, starts, numbers[n], numbers[n + 1]) : text.Length;
            int first = starts.FindLastIndex(s => s <= from);
            int last = starts.FindLastIndex(s => s < to);
            TextLine[] lined = [.. own.Skip(first).Take(last - first + 1)];
            if (lined.Length > 0 && rows.Of(Parts(text[from..to], numbers[n].Index - from, numbers[n].Length, lined)) is { } ingredient)
            {
                yield return ingredient;
            }

            from = to;
        }
    }

    // All text with line feeds as blanks, and where each line begins in it.
    private static (string Text, List<int> Starts) Joined(List<TextLine> lines)
    {
        var text = new StringBuilder();
        var starts = new List<int>();
        foreach (TextLine line in lines)
        {
            bool hyphen = text.Length > 1 && text[^1] == '-' && char.IsLetterOrDigit(text[^2]) && char.IsLetterOrDigit(line.Text[0]);
            text.Append(text.Length == 0 || hyphen ? "" : " ");
            starts.Add(text.Length);
            text.Append(line.Text);
        }

        return (text.ToString(), starts);
    }

    // The first name begins on the line of its number, or above it as far as no sentence or heading ends there.
    private static int FirstStart(List<TextLine> lines, List<int> starts, int number)
    {
        int at = starts.FindLastIndex(s => s <= number);
        while (at > 0 && !Ends().IsMatch(lines[at - 1].Text) && !Numbered().IsMatch(lines[at - 1].Text))
        {
            at--;
        }

        return starts[at];
    }

    // The next name begins on the first line after all that is said of the ingredient before it.
    private int NextStart(string text, List<int> starts, Match number, Match next)
    {
        string between = text[(number.Index + number.Length)..next.Index];
        int said = Math.Max(hazards.EndOfLast(between), Percent().Matches(between).Select(m => m.Index + m.Length).DefaultIfEmpty(0).Max());
        int end = number.Index + number.Length + said;
        int start = starts.FirstOrDefault(s => s >= end && s <= next.Index, -1);
        return start >= 0 ? start
            : starts.Last(s => s <= next.Index) is var line && line > number.Index ? line
            : next.Index;
    }

    private Dictionary<string, Cell> Parts(string entry, int number, int length, TextLine[] lines)
    {
        string name = Bullet().Replace(OpenBracket().Replace(entry[..number], ""), "");
        string cas = entry.Substring(number, length);
        string rest = entry[(number + length)..];
        int hazard = hazards.StartOfFirst(rest);
        string middle = rest[..hazard];
        string share = middle[(middle.LastIndexOf(':') + 1)..];
        string numbers = middle[..(middle.LastIndexOf(':') + 1)];
        var parts = new Dictionary<string, string>
        {
            [ColumnKind.Name] = name,
            [ColumnKind.Cas] = cas,
            [ColumnKind.Ec] = numbers,
            [ColumnKind.Share] = share.Trim(' ', ')', ';', ',', '(', ']', '['),
            [ColumnKind.Classes] = rest[hazard..],
        };
        Word first = lines[0].Words[0];
        return parts
            .Where(p => p.Value.Any(char.IsLetterOrDigit))
            .ToDictionary(p => p.Key, p => new Cell([lines[0].Only([new Word(p.Value.Trim(), Around(lines), first.TypeSize)])]));
    }

    private static Box Around(TextLine[] lines) => Box.Around(lines.Where(l => l.IsBeside(lines[0])).Select(l => l.Frame));

    [GeneratedRegex(@"[.:;]$")]
    private static partial Regex Ends();

    [GeneratedRegex(@"^[0-9]{1,2}\.[0-9]")]
    private static partial Regex Numbered();

    [GeneratedRegex(@"[0-9]\s?%")]
    private static partial Regex Percent();

    [GeneratedRegex(@"^\s*(?:[\u2022\u2023\u25aa\u25cf*\u2013-]|[0-9]{1,2}[.)])\s+")]
    private static partial Regex Bullet();

    [GeneratedRegex(@"[(\[][^()\[\]]*$")]
    private static partial Regex OpenBracket();
}
