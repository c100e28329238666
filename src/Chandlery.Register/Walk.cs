namespace Chandlery.Register;

/// <summary>
/// The numbers of the entries that have a part of a text in a column, found by going through the rows in their order: for a part that so
/// many texts have that most entries have one of them.
/// </summary>
/// <param name="Table">The table.</param>
/// <param name="Column">Its column.</param>
/// <param name="Part">The part.</param>
internal sealed record Walk(string Table, string Column, string Part) : INumbers
{
    private const int RowsAtOnce = 1000;

    /// <summary>Whether an entry has the part.</summary>
    /// <param name="store">The database.</param>
    /// <param name="number">The entry.</param>
    public bool Holds(RegisterStore store, long number) =>
        store
            .Rows(row => RegisterStore.Text(row, 0), $"SELECT {Column} FROM {Table} WHERE number = @p0", number)
            .Exists(text => text.Contains(Part, StringComparison.OrdinalIgnoreCase));

    /// <inheritdoc/>
    public IReadOnlyList<long> Read(RegisterStore store, long from, bool latestFirst, int count)
    {
        string order = latestFirst ? "number <= @p0 ORDER BY number DESC" : "number >= @p0 ORDER BY number";
        var numbers = new List<long>();
        int limit = RowsAtOnce;
        long at = from;
        while (true)
        {
            List<(long Number, string Text)> rows = store.Rows(
                row => (row.GetInt64(0), RegisterStore.Text(row, 1)),
                $"SELECT number, {Column} FROM {Table} WHERE {order} LIMIT {limit}",
                at
            );
            foreach ((long number, string text) in rows)
            {
                if (text.Contains(Part, StringComparison.OrdinalIgnoreCase) && (numbers.Count == 0 || numbers[^1] != number))
                {
                    numbers.Add(number);
                    if (numbers.Count == count)
                    {
                        return numbers;
                    }
                }
            }

            if (rows.Count < limit)
            {
                return numbers;
            }

            // The last entry's rows may go on, so they are read again; where they are all there is, more at once.
            limit = rows[^1].Number == at ? limit * 2 : RowsAtOnce;
            at = rows[^1].Number;
        }
    }
}
