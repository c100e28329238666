using Microsoft.Data.Sqlite;

namespace Chandlery.Register;

/// <summary>Checks a register from end to end, an entry at a time: a damaged one is named, and the others are checked all the same.</summary>
/// <param name="connection">The open register.</param>
/// <param name="firstPrevious">What the first entry follows.</param>
/// <param name="hashOf">The hash of number, time, author, content and hash of the one before.</param>
internal sealed class RegisterCheck(
    SqliteConnection connection,
    string firstPrevious,
    Func<long, string, string, string, string, string> hashOf
)
{
    private readonly List<SearchedTable> tables =
    [
        .. SearchedRows.Tables.Where(t => Exists(connection, t.Key)).Select(t => new SearchedTable(connection, t.Key, t.Value)),
    ];

    private readonly List<string> wrong = [];
    private string? witnessed;

    /// <summary>What is wrong; empty when nothing is.</summary>
    /// <param name="witness">The witness beside the register; null when there is none.</param>
    public IReadOnlyList<string> Run(Witness? witness)
    {
        CheckDeclarations();
        long last = CheckEntries(witness);
        foreach (SearchedTable table in tables)
        {
            table.SkipTo(long.MaxValue, number => wrong.Add($"{table.Name} has rows of an entry {number} that there is not"));
            table.Dispose();
        }

        if (witness is null)
        {
            if (last > 0)
            {
                wrong.Add(
                    "the witness file is missing beside the register: entries cut off the end would not show; 'register add' writes it anew"
                );
            }
        }
        else if (witness.Number > last)
        {
            wrong.Add(
                $"entries {last + 1} to {witness.Number} were cut off the end: the witness beside the register names entry {witness.Number}"
            );
        }
        else if (witness.Number > 0 && witnessed != witness.Hash)
        {
            wrong.Add($"entry {witness.Number} is not the one that the witness beside the register names");
        }

        return wrong;
    }

    private static bool Exists(SqliteConnection connection, string table)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "SELECT 1 FROM sqlite_schema WHERE type = 'table' AND name = $0";
        command.Parameters.AddWithValue("$0", table);
        return command.ExecuteScalar() is not null;
    }

    private void CheckDeclarations()
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "SELECT sha256, text FROM declaration";
        using SqliteDataReader row = command.ExecuteReader();
        while (row.Read())
        {
            if (RegisterFile.Sha256(RegisterFile.Text(row, 1)) != RegisterFile.Text(row, 0))
            {
                wrong.Add($"the declaration {RegisterFile.Text(row, 0)} was changed");
            }
        }
    }

    private long CheckEntries(Witness? witness)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "SELECT number, at, by, content, previous_hash, hash, batch, subject FROM entry ORDER BY number";
        using SqliteCommand held = connection.CreateCommand();
        held.CommandText = "SELECT 1 FROM declaration WHERE sha256 = $0";
        SqliteParameter sha256 = held.Parameters.AddWithValue("$0", "");
        using SqliteDataReader row = command.ExecuteReader();
        string previous = firstPrevious;
        string before = "";
        long last = 0;
        while (row.Read())
        {
            long number = row.GetInt64(0);
            string at = RegisterFile.Text(row, 1);
            string hash = RegisterFile.Text(row, 5);
            if (number != last + 1)
            {
                wrong.Add(number == last + 2 ? $"entry {last + 1} is missing" : $"entries {last + 1} to {number - 1} are missing");
            }

            if (RegisterFile.Text(row, 4) != previous)
            {
                wrong.Add($"entry {number} does not follow the one before it");
            }

            if (string.CompareOrdinal(at, before) < 0)
            {
                wrong.Add($"entry {number} was made at {at}, before the one before it ({before})");
            }

            if (hashOf(number, at, RegisterFile.Text(row, 2), RegisterFile.Text(row, 3), RegisterFile.Text(row, 4)) != hash)
            {
                wrong.Add($"entry {number} was changed");
            }

            if (RegisterFile.Parse(RegisterFile.Text(row, 3)) is { } content)
            {
                CheckContent(number, content, RegisterFile.Text(row, 6), RegisterFile.Text(row, 7));
                foreach (UsedDeclaration declaration in content.Declarations)
                {
                    sha256.Value = declaration.Sha256;
                    if (held.ExecuteScalar() is null)
                    {
                        wrong.Add($"entry {number}: the text of {declaration.Path} is missing");
                    }
                }
            }
            else
            {
                wrong.Add($"entry {number} is damaged and cannot be read");
            }

            if (number == witness?.Number)
            {
                witnessed = hash;
            }

            (previous, before, last) = (hash, at, number);
        }

        return last;
    }

    // What is searched must be what is signed.
    private void CheckContent(long number, RegisterContent content, string batch, string subject)
    {
        if (batch != content.Batch || subject != content.Subject)
        {
            wrong.Add(
                $"entry {number}: batch or subject is searched as '{batch}', '{subject}', and signed as '{content.Batch}', '{content.Subject}'"
            );
        }

        ILookup<string, string[]> signed = SearchedRows.Of(content).ToLookup(r => r.Table, r => r.Cells);
        foreach (SearchedTable table in tables)
        {
            table.SkipTo(number, stray => wrong.Add($"{table.Name} has rows of an entry {stray} that there is not"));
            if (!table.TakeRowsOf(number).SequenceEqual(signed[table.Name].Select(SearchedTable.Joined)))
            {
                wrong.Add($"entry {number}: {table.Name} does not say what is signed");
            }
        }
    }
}
