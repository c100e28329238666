namespace Chandlery.Register;

/// <summary>Writes entries: the texts behind them, what is signed, and the rows that are searched, which are made from what is signed.</summary>
internal static class RegisterRows
{
    /// <summary>Writes entries; the caller holds the lock.</summary>
    /// <param name="store">The database.</param>
    /// <param name="entries">The entries with what they say, in order.</param>
    /// <param name="declarations">Texts of their declarations by hash; those that stand there already may be left out.</param>
    /// <param name="documents">Bytes of the documents that are kept, by hash.</param>
    public static void Write(
        RegisterStore store,
        IReadOnlyList<(SignedEntry Signed, RegisterContent Content)> entries,
        IReadOnlyDictionary<string, string> declarations,
        IReadOnlyDictionary<string, byte[]> documents
    )
    {
        foreach ((string sha256, byte[] bytes) in documents)
        {
            store.Run("INSERT INTO document (sha256, bytes) VALUES (@p0, @p1) ON CONFLICT DO NOTHING", sha256, bytes);
        }

        foreach ((string sha256, string text) in declarations)
        {
            store.Run("INSERT INTO declaration (sha256, text) VALUES (@p0, @p1) ON CONFLICT DO NOTHING", sha256, text);
        }

        store.Insert(
            "entry",
            HeldEntry.Columns,
            entries.Select(e =>
                new object[]
                {
                    e.Signed.Number,
                    e.Signed.At,
                    e.Signed.By,
                    e.Signed.Content,
                    e.Signed.PreviousHash,
                    e.Signed.Hash,
                    e.Content.Batch,
                    e.Content.Subject,
                }
            )
        );
        WriteSearched(store, entries);
    }

    /// <summary>Writes the rows by which entries are searched.</summary>
    /// <param name="store">The database.</param>
    /// <param name="entries">The entries with what they say, in order.</param>
    public static void WriteSearched(RegisterStore store, IReadOnlyList<(SignedEntry Signed, RegisterContent Content)> entries)
    {
        IEnumerable<IGrouping<string, object[]>> tables = entries
            .SelectMany(e =>
                SearchedRows.Of(e.Content).Select(r => (r.Table, Cells: (object[])[e.Signed.Number, .. r.Cells.Cast<object>()]))
            )
            .GroupBy(r => r.Table, r => r.Cells);
        foreach (IGrouping<string, object[]> table in tables)
        {
            store.Insert(table.Key, $"number, {SearchedRows.Tables[table.Key]}", table);
        }
    }
}
