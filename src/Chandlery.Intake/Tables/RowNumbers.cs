using System.Globalization;
using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Tables;

/// <summary>Takes away the running numbers that some tables give their rows.</summary>
internal static class RowNumbers
{
    /// <summary>The table without them; the same table when it has none.</summary>
    public static Table Without(Table table)
    {
        for (int c = 0; c < table.Columns.Count && table.Rows.Count > 1; c++)
        {
            if ((c == 0 || table.Columns[c].Kinds.Count == 0) && AreNumbered(table.Rows, c))
            {
                int column = c;
                return table with { Rows = [.. table.Rows.Select(r => Without(r, column))] };
            }
        }

        return table;
    }

    private static bool AreNumbered(IReadOnlyList<Row> rows, int column)
    {
        int? first = NumberOf(rows[0].Cells[column]);
        return first is 0 or 1 && rows.Select((r, at) => NumberOf(r.Cells[column]) == first + at).All(same => same);
    }

    private static int? NumberOf(Cell cell) =>
        cell.Lines.Count > 0 && int.TryParse(cell.Lines[0].Words[0].Text.Trim('.', ')', '('), NumberStyles.None, CultureInfo.InvariantCulture, out int n)
            ? n
            : null;

    private static Row Without(Row row, int column)
    {
        TextLine first = row.Cells[column].Lines[0];
        IEnumerable<TextLine> rest = first.Words.Count > 1 ? [first.Only([.. first.Words.Skip(1)])] : [];
        var cell = new Cell([.. rest, .. row.Cells[column].Lines.Skip(1)]);
        return row with { Cells = [.. row.Cells.Select((c, i) => i == column ? cell : c)] };
    }
}
