using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Tables;

/// <summary>Rebuilds an ingredient table that has no heading: what a column holds is told from what stands in it.</summary>
/// <param name="wording">How shares are written.</param>
/// <param name="hazards">How classes are written.</param>
internal sealed class ShapeFinder(SheetWording wording, HazardText hazards)
{
    private const int FewestRows = 2;
    private const double Most = 0.6;

    /// <summary>The table among these lines; null when their CAS numbers do not stand in one column.</summary>
    /// <param name="lines">Lines of a section, in reading order over all its pages.</param>
    /// <param name="pages">The pages, for ruled lines.</param>
    public Table? Find(IReadOnlyList<TextLine> lines, IReadOnlyList<SheetPage> pages)
    {
        List<TextLine> own = [.. lines.TakeWhile(l => !Phrase.AnyIn(wording.Lists["tableEnds"], l.Text))];
        int first = own.FindIndex(l => ColumnKind.HasCas(l.Text) && l.Phrases().Count > 1);
        if (first < 0 || own.Count(l => ColumnKind.HasCas(l.Text) && l.Phrases().Count > 1) < FewestRows)
        {
            return null;
        }

        List<TextLine> body = [.. RowNumbers.Without([.. own.Skip(first)])];
        List<double> borders = [.. Borders(body)];
        List<BodyLine> cut = [.. body.Select(l => Cut(l, borders))];
        List<Column> columns = [.. Enumerable.Range(0, borders.Count + 1).Select(c => new Column(KindsOf(cut, c), ""))];
        if (columns.Count(c => c.Kinds.Contains(ColumnKind.Cas)) != 1 || !columns.Any(c => c.Kinds.Contains(ColumnKind.Name)))
        {
            return null;
        }

        IEnumerable<RuledLine> rules = pages.Where(p => body.Any(l => l.Page == p.Number)).SelectMany(p => p.Rules);
        return new Table(columns, new RowFinder(columns, wording, hazards).Find(cut, [.. rules])) { IsByShape = true };
    }

    private static IEnumerable<double> Borders(List<TextLine> body)
    {
        double left = body.Min(l => l.Frame.Left);
        double right = body.Max(l => l.Frame.Right);
        return ColumnFinder.Gaps(body).Select(g => (g.From + g.To) / 2).Where(x => x > left && x < right);
    }

    private static BodyLine Cut(TextLine line, List<double> borders)
    {
        var cells = new TextLine?[borders.Count + 1];
        foreach (IGrouping<int, Word> part in line.Words.GroupBy(w => borders.Count(b => b < w.Box.CentreX)))
        {
            cells[part.Key] = line.Only([.. part]);
        }

        return new BodyLine(line, cells, false, false);
    }

    // The kind that most of the column's cells have. Letters that are neither classes nor shares are names.
    private List<string> KindsOf(List<BodyLine> lines, int column)
    {
        List<string> texts = [.. lines.Select(l => l.Cells[column]?.Text).OfType<string>()];
        bool Mostly(Func<string, bool> isOne) => texts.Count > 0 && texts.Count(isOne) >= Most * texts.Count;
        return Mostly(ColumnKind.HasCas) ? [ColumnKind.Cas]
            : Mostly(t => ShareText.Parse(t, wording).Success) ? [ColumnKind.Share]
            : Mostly(IsOfClasses) ? [ColumnKind.Classes]
            : Mostly(t => !t.Any(char.IsLetter)) ? [ColumnKind.Ignored]
            : [ColumnKind.Name];
    }

    private bool IsOfClasses(string text)
    {
        HazardReading read = hazards.Read(text);
        return read.Classes is not null || read.M is not null || read.Limits.Count > 0 || read.Toxicity.Count > 0;
    }
}
