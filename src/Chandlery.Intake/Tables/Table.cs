using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Tables;

/// <summary>A column of a table.</summary>
/// <param name="Kinds">What it holds, from its heading; empty when the heading says nothing that is known.</param>
/// <param name="Heading">The heading's text.</param>
internal sealed record Column(IReadOnlyList<string> Kinds, string Heading);

/// <summary>A cell: the words of one row in one column.</summary>
/// <param name="Lines">Its lines from top to bottom.</param>
internal sealed record Cell(IReadOnlyList<TextLine> Lines)
{
    /// <summary>Its text with wrapped lines joined: a hyphen at a line's end stays and takes no blank.</summary>
    public string Text { get; } = Join(Lines);

    /// <summary>True when a line ends in a hyphen after a letter, so that nobody knows whether the hyphen belongs to the word.</summary>
    public bool HasSplitWord => Lines.SkipLast(1).Any(l => l.Text is [.., var before, '-'] && char.IsLetter(before));

    /// <summary>Where it stands; null when it is empty.</summary>
    public Box? Box => Lines.Count == 0 ? null : Pages.Box.Around(Lines.Select(l => l.Box));

    private static string Join(IReadOnlyList<TextLine> lines)
    {
        string text = "";
        foreach (TextLine line in lines)
        {
            bool hyphen =
                text is [.., var before, '-'] && char.IsLetterOrDigit(before) && line.Text.Length > 0 && char.IsLetterOrDigit(line.Text[0]);
            text = text.Length == 0 || hyphen ? text + line.Text : text + " " + line.Text;
        }

        return text;
    }
}

/// <summary>A row of a table.</summary>
/// <param name="Page">Page on which it starts.</param>
/// <param name="Cells">A cell for each column.</param>
/// <param name="Doubts">Why the row's borders are not certain.</param>
internal sealed record Row(int Page, IReadOnlyList<Cell> Cells, IReadOnlyList<string> Doubts)
{
    /// <summary>Where it stands on its first page.</summary>
    public Box Box => Pages.Box.Around(Cells.SelectMany(c => c.Lines).Where(l => l.Page == Page).Select(l => l.Box));
}

/// <summary>A table rebuilt from the places of its words.</summary>
/// <param name="Columns">Columns from left to right.</param>
/// <param name="Rows">Rows from top to bottom, over all pages.</param>
internal sealed record Table(IReadOnlyList<Column> Columns, IReadOnlyList<Row> Rows)
{
    /// <summary>The cell of a row that holds this kind; null when no column does.</summary>
    public Cell? CellOf(Row row, string kind)
    {
        int at = Columns.ToList().FindIndex(c => c.Kinds.Contains(kind));
        return at < 0 ? null : row.Cells[at];
    }
}
