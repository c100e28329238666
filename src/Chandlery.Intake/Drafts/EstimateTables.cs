using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Tables of estimates, whose headings say once what every figure below them is ("LD50 oral, rat").</summary>
internal static class EstimateTables
{
    private const double FarthestMm = 12;

    /// <summary>The lines, with the heading of its column before each figure.</summary>
    /// <param name="lines">Lines of section 11.</param>
    /// <param name="hazards">How estimates are named.</param>
    public static IEnumerable<TextLine> Headed(IReadOnlyList<TextLine> lines, HazardText hazards)
    {
        IReadOnlyList<TextLine> headings = [];
        foreach (TextLine line in lines)
        {
            IReadOnlyList<TextLine> phrases = line.Phrases();
            IReadOnlyList<TextLine> named = [.. phrases.Skip(1).Where(p => hazards.NamesEstimate(p.Text) && !HasFigure(p))];
            if (named.Count > 0 && phrases.All(p => !HasFigure(p)))
            {
                headings = named;
                yield return line;
                continue;
            }

            headings = phrases.Count < 2 || !line.IsBeside(headings.DefaultIfEmpty(line).First()) ? [] : headings;
            yield return headings.Count == 0 ? line : line.Only([.. phrases.SelectMany((p, at) => Under(p, at, headings, hazards))]);
        }
    }

    private static IEnumerable<Word> Under(TextLine phrase, int at, IReadOnlyList<TextLine> headings, HazardText hazards)
    {
        TextLine heading = headings.MinBy(h => Distance(h, phrase))!;
        bool isUnder = at > 0 && HasFigure(phrase) && !hazards.NamesEstimate(phrase.Text) && Distance(heading, phrase) < FarthestMm;
        Box edge = phrase.Words[0].Box with { Right = phrase.Words[0].Box.Left };
        return isUnder ? phrase.Words.Prepend(new Word(heading.Text + ":", edge, phrase.Words[0].TypeSize)) : phrase.Words;
    }

    private static bool HasFigure(TextLine phrase) => phrase.Words.Any(w => char.IsAsciiDigit(w.Text[0]) || w.Text[0] is '<' or '>');

    private static double Distance(TextLine a, TextLine b) =>
        Math.Min(Math.Abs(a.Frame.Left - b.Frame.Left), Math.Abs(a.Frame.CentreX - b.Frame.CentreX));
}
