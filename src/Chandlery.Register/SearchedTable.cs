using Microsoft.Data.Sqlite;

namespace Chandlery.Register;

/// <summary>Reads a searched table in the order of the entries, alongside them.</summary>
internal sealed class SearchedTable : IDisposable
{
    private const char Between = '\u001f';

    private readonly SqliteCommand command;
    private readonly SqliteDataReader row;
    private bool hasRow;

    public SearchedTable(SqliteConnection connection, string name, string columns)
    {
        Name = name;
        command = connection.CreateCommand();
        command.CommandText = $"SELECT number, {columns} FROM {name} ORDER BY number, rowid";
        row = command.ExecuteReader();
        hasRow = row.Read();
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Cells as one text.</summary>
    public static string Joined(IEnumerable<string> cells) => string.Join(Between, cells);

    /// <summary>Passes over rows of numbers below one; each such number is told once.</summary>
    public void SkipTo(long number, Action<long> stray)
    {
        long told = long.MinValue;
        while (hasRow && row.GetInt64(0) < number)
        {
            if (row.GetInt64(0) != told)
            {
                told = row.GetInt64(0);
                stray(told);
            }

            hasRow = row.Read();
        }
    }

    /// <summary>The rows of an entry, which are next.</summary>
    public IReadOnlyList<string> TakeRowsOf(long number)
    {
        var rows = new List<string>();
        while (hasRow && row.GetInt64(0) == number)
        {
            rows.Add(Joined(Enumerable.Range(1, row.FieldCount - 1).Select(i => RegisterFile.Text(row, i))));
            hasRow = row.Read();
        }

        return rows;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        row.Dispose();
        command.Dispose();
    }
}
