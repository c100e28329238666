namespace Chandlery.Register;

/// <summary>The numbers of the entries that have a value in a column, read from an index in their order.</summary>
/// <param name="Table">The table.</param>
/// <param name="Column">Its column; null for all entries.</param>
/// <param name="Value">The value.</param>
internal sealed record Posting(string Table, string? Column = null, string Value = "") : INumbers
{
    /// <inheritdoc/>
    public IReadOnlyList<long> Read(RegisterStore store, long from, bool latestFirst, int count) =>
        store.Rows(row => row.GetInt64(0), Sql(latestFirst, count), Column is null ? [from] : [from, Value]);

    /// <summary>What is asked of the database.</summary>
    public string Sql(bool latestFirst, int count)
    {
        string value = Column is null ? "" : $"{Column} = @p1 AND ";
        string order = latestFirst ? "number <= @p0 ORDER BY number DESC" : "number >= @p0 ORDER BY number";
        return $"SELECT DISTINCT number FROM {Table} WHERE {value}{order} LIMIT {count}";
    }
}
