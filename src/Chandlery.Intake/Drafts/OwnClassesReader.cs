using System.Text.RegularExpressions;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>Reads the classes of the product itself from section 2.</summary>
internal sealed partial class OwnClassesReader(SheetWording wording, HazardText hazards, int document)
{
    private const string LawInForce = "1272/2008";
    private const double ToleranceMm = 1.5;

    /// <summary>The classes; null when none are found.</summary>
    /// <param name="classification">Lines of 2.1.</param>
    /// <param name="label">Lines of 2.2, whose statements the classes must explain.</param>
    public Found<IReadOnlyList<string>>? Read(IReadOnlyList<TextLine> classification, IReadOnlyList<TextLine> label)
    {
        List<TextLine> lines = [.. WithoutOld(classification.TakeWhile(l => !Label22().IsMatch(l.Text)))];
        List<TextLine> withClasses = [.. lines.Where(l => hazards.Read(l.Text).Classes is not null)];
        if (withClasses.Count == 0)
        {
            return null;
        }

        HazardReading read = hazards.Read(string.Join(" ; ", lines.Select(l => l.Text)));
        IReadOnlyList<string> classes = read.Classes ?? [];
        List<string> doubts =
        [
            .. read.Doubts.Where(d => !d.StartsWith(HazardText.NotUnderstood, StringComparison.Ordinal) || SaysCategory(d)),
        ];
        doubts.AddRange(
            label
                .SelectMany(l => Statement().Matches(l.Text).Select(m => m.Value))
                .Distinct()
                .Where(code => !classes.Any(c => c.Contains(code, StringComparison.Ordinal)))
                .Select(code => $"the label in section 2 carries {code}, which no class that was read explains")
        );
        return new Found<IReadOnlyList<string>>(
            classes,
            document,
            withClasses[0].Page,
            Box.Around(withClasses.Where(l => l.Page == withClasses[0].Page).Select(l => l.Box)),
            doubts
        );
    }

    // A category that belongs to no class which was read: a class may have been lost.
    private bool SaysCategory(string doubt) => Phrase.AnyIn(wording.Lists["categoryWords"], doubt);

    // Without what stands under or beside the heading of the directives that the regulation replaced.
    private IEnumerable<TextLine> WithoutOld(IEnumerable<TextLine> lines)
    {
        double from = double.NaN;
        double to = double.NaN;
        bool skips = false;
        foreach (TextLine line in lines)
        {
            IReadOnlyList<TextLine> phrases = line.Phrases();
            int old = phrases.ToList().FindIndex(p => IsOld(p.Text));
            if (old >= 0 && phrases.Count == 1)
            {
                skips = true;
                continue;
            }

            skips &= !line.Text.Contains(LawInForce, StringComparison.Ordinal);
            if (old >= 0)
            {
                from = phrases[old].Frame.Left - ToleranceMm;
                to = old + 1 < phrases.Count ? phrases[old + 1].Frame.Left - ToleranceMm : double.PositiveInfinity;
            }

            List<Word> rest = [.. line.Words.Where(w => double.IsNaN(from) || w.Box.Left < from || w.Box.Left >= to)];
            if (!skips && rest.Count > 0)
            {
                yield return line.Only(rest);
            }
        }
    }

    private bool IsOld(string text) =>
        Phrase.AnyIn(wording.Columns[Tables.ColumnKind.Old], text) && !text.Contains(LawInForce, StringComparison.Ordinal);

    [GeneratedRegex(@"^[0-9]\.2\b")]
    private static partial Regex Label22();

    [GeneratedRegex(@"\bH[0-9]{3}[A-Za-z]{0,2}\b")]
    private static partial Regex Statement();
}
