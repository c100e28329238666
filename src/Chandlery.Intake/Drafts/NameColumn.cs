using System.Text.RegularExpressions;
using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;

namespace Chandlery.Intake.Drafts;

/// <summary>The column of a table in which names stand: its own, or that of the numbers where they share one.</summary>
/// <param name="At">Its index; -1 when there is none.</param>
/// <param name="RightEdge">How far to the right its lines reach.</param>
/// <param name="HasCapitalsInside">True when names have capitals inside ("Benzyl Alcohol"), so that a capital tells no beginning.</param>
internal sealed partial record NameColumn(int At, double RightEdge, bool HasCapitalsInside)
{
    /// <summary>The column of a table.</summary>
    public static NameColumn Of(Table table)
    {
        List<Column> columns = [.. table.Columns];
        int at = columns.FindIndex(c => c.Kinds.Contains(ColumnKind.Name));
        at = at >= 0 ? at : columns.FindIndex(c => c.Kinds.Contains(ColumnKind.Cas));
        List<TextLine> lines = at < 0 ? [] : [.. table.Rows.SelectMany(r => r.Cells[at].Lines)];
        return new NameColumn(
            at,
            lines.Select(l => l.Frame.Right).DefaultIfEmpty(0).Max(),
            lines.Exists(l => CapitalInside().IsMatch(l.Text))
        );
    }

    /// <summary>True when a line after the first begins as a name does: a heading of several rows or another name may stand in the cell.</summary>
    /// <param name="cell">A cell of the column.</param>
    /// <param name="labels">Labels of numbers, whose lines tell nothing.</param>
    public bool HoldsAnother(Cell cell, NumberLabels labels)
    {
        List<TextLine> lines = [.. cell.Lines.Where(l => labels.Without(l.Text).Any(char.IsLetter))];
        return !HasCapitalsInside
            && lines.Zip(lines.Skip(1)).Any(p => p.First.Text[^1] is not ('-' or ',' or '(') && BeginsName().IsMatch(p.Second.Text));
    }

    [GeneratedRegex(@"^(?:\p{Lu}\p{Ll}|(?:\p{Ll}|[0-9]+(?:,[0-9]+)*)-\(?\p{L})")]
    private static partial Regex BeginsName();

    [GeneratedRegex(@"^\p{L}.*\s\p{Lu}\p{Ll}")]
    private static partial Regex CapitalInside();
}
