namespace Chandlery.Register;

/// <summary>Makes what is searched anew from what is signed, some entries at a time. The caller holds the lock of a writer.</summary>
/// <param name="store">The database.</param>
internal sealed class SearchRebuild(RegisterStore store)
{
    private const int AtOnce = 200;

    /// <summary>Makes all of it.</summary>
    /// <returns>The numbers of the entries that cannot be read.</returns>
    public IReadOnlyList<long> All()
    {
        foreach (string table in SearchedRows.Tables.Keys)
        {
            store.Run($"DELETE FROM {table}");
        }

        if (store.KnowsTexts)
        {
            store.Run($"DELETE FROM {KnownTexts.Table}");
        }

        var damaged = new List<long>();
        store.Unguarded(() =>
        {
            long last = 0;
            while (
                store.Rows(HeldEntry.Read, $"SELECT {HeldEntry.Columns} FROM entry WHERE number > @p0 ORDER BY number LIMIT {AtOnce}", last)
                    is { Count: > 0 } entries
            )
            {
                foreach (HeldEntry entry in entries)
                {
                    if (entry.Signed.Says() is { } content)
                    {
                        Write(entry, content);
                    }
                    else
                    {
                        damaged.Add(entry.Signed.Number);
                    }
                }

                last = entries[^1].Signed.Number;
            }
        });
        return damaged;
    }

    private void Write(HeldEntry entry, RegisterContent content)
    {
        RegisterRows.WriteSearched(store, [(entry.Signed, content)]);
        if (!entry.SaysOf(content))
        {
            store.Run(
                "UPDATE entry SET batch = @p0, subject = @p1 WHERE number = @p2",
                content.Batch,
                content.Subject,
                entry.Signed.Number
            );
        }
    }
}
