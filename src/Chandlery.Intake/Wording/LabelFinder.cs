using System.Text.RegularExpressions;
using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Wording;

/// <summary>Finds values by the labels before them: in the same phrase, the next phrase of the line, or the next line.</summary>
/// <param name="wording">Labels.</param>
internal sealed partial class LabelFinder(SheetWording wording)
{
    private const string Company = "supplier";
    private static readonly string[] OftenInOneLine = ["document", "version", "revised", "issued", "otherDates"];

    /// <summary>The first value with one of the labels of this kind; null when there is none.</summary>
    public Labelled? Find(IReadOnlyList<TextLine> lines, string kind) => All(lines, kind).FirstOrDefault();

    /// <summary>All values with labels of this kind.</summary>
    public IEnumerable<Labelled> All(IReadOnlyList<TextLine> lines, string kind)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            IReadOnlyList<TextLine> phrases = [.. lines[i].Phrases().Where(p => p.Text.Any(char.IsLetterOrDigit))];
            for (int p = 0; p < phrases.Count; p++)
            {
                string? rest = AfterLabel(phrases[p].Text, kind);
                if (rest is null)
                {
                    continue;
                }

                Labelled? value =
                    rest.Length > 0 ? new Labelled(Cut(rest, kind), lines[i].Page, phrases[p].Box, false, IsClose(phrases[p].Text, rest))
                    : p + 1 < phrases.Count && !IsLabel(phrases[p + 1].Text) ? Beside(lines, i, phrases[p + 1], kind)
                    : p == phrases.Count - 1 && i + 1 < lines.Count && !IsLabel(lines[i + 1].Text) && !Numbered().IsMatch(lines[i].Text)
                        ? new Labelled(lines[i + 1].Text, lines[i + 1].Page, lines[i + 1].Box, true)
                    : null;
                if (value is { Text.Length: > 0 })
                {
                    yield return value;
                }
            }
        }
    }

    // "Company Hollin Works" may be a label and its value, or the beginning of a sentence.
    private static bool IsClose(string phrase, string rest) =>
        phrase[..Math.Max(0, phrase.LastIndexOf(rest, StringComparison.Ordinal))].TrimEnd()
            is not [.., ':' or '=' or '#' or '-' or '\u2013'];

    // Number, version and date often follow each other in one line with nothing but their labels between.
    private string? AfterLabel(string phrase, string kind)
    {
        string text = WithoutMark(phrase);
        if (Phrase.AfterLabel(text, wording.Labels[kind]) is { } rest)
        {
            return rest;
        }

        int at = OftenInOneLine.Contains(kind)
            ? wording.Labels[kind].Select(l => Phrase.IndexOf(l, text.ToLowerInvariant())).Where(i => i > 0).DefaultIfEmpty(-1).Min()
            : -1;
        return at > 0 && Phrase.AfterLabel(text[at..], wording.Labels[kind]) is { Length: > 0 } later && later.Any(char.IsAsciiDigit)
            ? later
            : null;
    }

    // The rest of the value may stand in the lines below, under its first line and beside no label.
    private Labelled Beside(IReadOnlyList<TextLine> lines, int at, TextLine value, string kind)
    {
        string text = value.Text.TrimStart(':', ' ');
        Box box = value.Box;
        for (int i = at + 1; i < lines.Count && lines[i].Page == lines[at].Page; i++)
        {
            bool under =
                Math.Abs(lines[i].Box.Left - value.Box.Left) < 0.7 && lines[i].Box.Bottom - box.Bottom < 1.5 * value.Words[0].TypeSize;
            // Street and telephone under a company's name.
            bool isAddress = kind == Company && lines[i].Text.Any(char.IsAsciiDigit);
            if (!under || isAddress || IsLabel(lines[i].Text))
            {
                break;
            }

            text += " " + lines[i].Text;
            box = box.Around(lines[i].Box);
        }

        return new Labelled(text, lines[at].Page, box, false, text.Length > value.Text.Length);
    }

    private string Cut(string text, string kind)
    {
        if (!OftenInOneLine.Contains(kind))
        {
            return text;
        }

        string plain = text.ToLowerInvariant();
        int end = OftenInOneLine
            .Where(k => k != kind)
            .SelectMany(k => wording.Labels[k])
            .Select(label => Phrase.IndexOf(label, plain))
            .Where(at => at > 0)
            .DefaultIfEmpty(text.Length)
            .Min();
        return text[..end].TrimEnd(' ', ',', ';', '-', '|', '/');
    }

    private bool IsLabel(string text) => wording.Labels.Values.Any(labels => Phrase.AfterLabel(WithoutMark(text), labels) is not null);

    private static string WithoutMark(string text) => Mark().Replace(text, "");

    [GeneratedRegex(@"^(?:\(?[a-z]\)|[0-9]+(?:\.[0-9]+)*\.?|[\u2022\u2013-])\s+")]
    private static partial Regex Mark();

    [GeneratedRegex(@"^[0-9]+\.[0-9]+")]
    private static partial Regex Numbered();
}
