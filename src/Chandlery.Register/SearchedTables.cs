namespace Chandlery.Register;

/// <summary>The rows that are searched, as they stand in the tables, held against what is signed.</summary>
/// <param name="store">The database.</param>
internal sealed class SearchedTables(RegisterStore store)
{
    // A register of an older program, opened to read, has none of these yet: it is filled when somebody adds.
    private const string Younger = "issued_ufi";

    /// <summary>The tables there are.</summary>
    public IReadOnlyList<string> There { get; } = [.. SearchedRows.Tables.Keys.Where(store.HasTable)];

    /// <summary>The first table that is gone; null when none is.</summary>
    public string? Gone => SearchedRows.Tables.Keys.FirstOrDefault(t => t != Younger && !There.Contains(t));

    /// <summary>The rows of some entries, by table and number, each as one text.</summary>
    /// <param name="which">Which numbers, as a condition with @p0, @p1...</param>
    /// <param name="values">The values of the condition.</param>
    public IReadOnlyDictionary<string, ILookup<long, string>> Of(string which, params object[] values) =>
        There.ToDictionary(
            table => table,
            table =>
                store
                    .Rows(
                        row =>
                            (
                                Number: row.GetInt64(0),
                                Cells: SearchedRows.Joined(Enumerable.Range(1, row.FieldCount - 1).Select(i => RegisterStore.Text(row, i)))
                            ),
                        $"SELECT number, {SearchedRows.Tables[table]} FROM {table} WHERE {which} ORDER BY number, {store.Line}",
                        values
                    )
                    .ToLookup(r => r.Number, r => r.Cells)
        );

    /// <summary>The tables whose rows of an entry are not those of what is signed.</summary>
    /// <param name="rows">What <see cref="Of"/> read.</param>
    /// <param name="number">The entry.</param>
    /// <param name="content">What it says.</param>
    public IEnumerable<string> Differing(IReadOnlyDictionary<string, ILookup<long, string>> rows, long number, RegisterContent content)
    {
        ILookup<string, string> signed = SearchedRows.Of(content).ToLookup(r => r.Table, r => SearchedRows.Joined(r.Cells));
        return There.Where(table => !rows[table][number].SequenceEqual(signed[table]));
    }
}
