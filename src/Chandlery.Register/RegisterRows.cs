using System.Data.Common;

namespace Chandlery.Register;

/// <summary>Writes an entry: the texts behind it, what is signed, and the rows that are searched, which are made from what is signed.</summary>
internal static class RegisterRows
{
    /// <summary>Writes an entry; the caller holds the lock.</summary>
    /// <param name="store">The database.</param>
    /// <param name="entry">The entry.</param>
    /// <param name="content">What it says.</param>
    /// <param name="declarations">Texts of its declarations by hash.</param>
    /// <param name="documents">Bytes of the documents that are kept, by hash.</param>
    public static void Write(
        RegisterStore store,
        SignedEntry entry,
        RegisterContent content,
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

        store.Run(
            $"INSERT INTO entry ({SignedEntry.Columns}, batch, subject) VALUES (@p0, @p1, @p2, @p3, @p4, @p5, @p6, @p7)",
            entry.Number,
            entry.At,
            entry.By,
            entry.Content,
            entry.PreviousHash,
            entry.Hash,
            content.Batch,
            content.Subject
        );
        foreach (IGrouping<string, string[]> table in SearchedRows.Of(content).GroupBy(r => r.Table, r => r.Cells))
        {
            WriteRows(store, table.Key, entry.Number, table);
        }
    }

    private static void WriteRows(RegisterStore store, string table, long number, IEnumerable<string[]> rows)
    {
        string columns = SearchedRows.Tables[table];
        int width = columns.Split(',').Length;
        string values = string.Join(", ", Enumerable.Range(0, width + 1).Select(i => $"@p{i}"));
        using DbCommand command = store.Command(
            $"INSERT INTO {table} (number, {columns}) VALUES ({values})",
            [number, .. Enumerable.Repeat("", width)]
        );
        foreach (string[] cells in rows)
        {
            for (int i = 0; i < width; i++)
            {
                command.Parameters[i + 1].Value = cells[i];
            }

            command.ExecuteNonQuery();
        }
    }
}
