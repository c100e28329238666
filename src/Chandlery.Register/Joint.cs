namespace Chandlery.Register;

/// <summary>
/// The numbers of the entries that have a value and meet other conditions too, found in one question: the database goes through the
/// entries of the rarest value and looks the others up, which is quicker than to read them all.
/// </summary>
/// <param name="First">The value whose entries are gone through.</param>
/// <param name="Others">The other conditions, each met by one of several values.</param>
internal sealed record Joint(Posting First, IReadOnlyList<IReadOnlyList<Posting>> Others) : INumbers
{
    /// <inheritdoc/>
    public IReadOnlyList<long> Read(RegisterStore store, long from, bool latestFirst, int count)
    {
        var values = new List<object> { from };
        string Named(string value)
        {
            values.Add(value);
            return $"@p{values.Count - 1}";
        }

        string Has(IGrouping<(string Table, string? Column), Posting> of)
        {
            string any = string.Join(", ", of.Select(p => Named(p.Value)));
            return $"EXISTS (SELECT 1 FROM {of.Key.Table} y WHERE y.{of.Key.Column} IN ({any}) AND y.number = x.number)";
        }

        string first = $"x.{First.Column} = {Named(First.Value)}";
        IEnumerable<string> met = Others.Select(o => $"({string.Join(" OR ", o.GroupBy(p => (p.Table, p.Column)).Select(Has))})");
        string bound = latestFirst ? "x.number <= @p0" : "x.number >= @p0";
        string order = latestFirst ? "x.number DESC" : "x.number";
        return store.Rows(
            row => row.GetInt64(0),
            $"SELECT DISTINCT x.number FROM {First.Table} x WHERE {string.Join(" AND ", met.Prepend(bound).Prepend(first))} ORDER BY {order} LIMIT {count}",
            [.. values]
        );
    }
}
