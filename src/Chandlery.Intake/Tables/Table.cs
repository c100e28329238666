namespace Chandlery.Intake.Tables;

/// <summary>A table rebuilt from the places of its words.</summary>
/// <param name="Columns">Columns from left to right.</param>
/// <param name="Rows">Rows from top to bottom, over all pages.</param>
internal sealed record Table(IReadOnlyList<Column> Columns, IReadOnlyList<Row> Rows)
{
    /// <summary>True when no heading says what the columns hold.</summary>
    public bool IsByShape { get; init; }

    /// <summary>The cell of a row that holds this kind; null when no column does.</summary>
    public Cell? CellOf(Row row, string kind)
    {
        int at = Columns.ToList().FindIndex(c => c.Kinds.Contains(kind));
        return at < 0 ? null : row.Cells[at];
    }
}
