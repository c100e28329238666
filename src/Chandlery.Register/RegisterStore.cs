using System.Data.Common;
using System.Globalization;

namespace Chandlery.Register;

/// <summary>The database that a register stands in, with what is its own in each kind: how it is locked, laid out, and what its failures mean.</summary>
/// <param name="connection">The open database.</param>
/// <param name="name">What messages call it.</param>
/// <param name="witnessFile">Where the witness is kept; null for nowhere.</param>
internal abstract class RegisterStore(DbConnection connection, string name, string? witnessFile) : IDisposable
{
    /// <summary>What messages call it.</summary>
    public string Name => name;

    /// <summary>Where the witness of the last entry is kept; null for nowhere.</summary>
    public string? WitnessFile => witnessFile;

    /// <summary>Whether there must be a witness: where all who add write the same one.</summary>
    public abstract bool IsWitnessOwed { get; }

    /// <summary>The column that tells in which order the rows of an entry were written.</summary>
    public abstract string Line { get; }

    /// <summary>Whether it keeps the different texts that are searched by a part apart: see <see cref="KnownTexts"/>.</summary>
    public virtual bool KnowsTexts => false;

    /// <summary>What is unknown when the last word of a transaction goes astray; null where that cannot be.</summary>
    public virtual string? WhenUnconfirmed => null;

    /// <summary>Does something as the only one who adds: all of it stands at the end, or nothing.</summary>
    /// <exception cref="IOException">The last word of it went astray, so that nobody knows.</exception>
    public T Append<T>(Func<T> work)
    {
        DbTransaction writing = BeginAppending();
        try
        {
            T done = work();
            Confirm(writing);
            return done;
        }
        finally
        {
            Release(writing);
        }
    }

    /// <summary>The same for work that has no result.</summary>
    public void Append(Action work) =>
        Append(() =>
        {
            work();
            return true;
        });

    /// <summary>Becomes the only one who adds, until the transaction ends; whoever comes second waits.</summary>
    public abstract DbTransaction BeginAppending();

    /// <summary>Whether it has a table.</summary>
    public abstract bool HasTable(string table);

    /// <summary>What a failure of the database means, as the rest of a sentence; null when it is none of its own.</summary>
    protected abstract string? InWords(Exception error);

    /// <summary>Does something, and says in words what fails.</summary>
    /// <exception cref="IOException">It failed.</exception>
    public T Guarded<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception error) when (InWords(error) is { } words)
        {
            throw new IOException($"{name}: {words}.", error);
        }
    }

    /// <summary>The same for work that has no result.</summary>
    public void Guarded(Action work) =>
        Guarded(() =>
        {
            work();
            return true;
        });

    /// <summary>A command; values are called @p0, @p1... in it.</summary>
    public DbCommand Command(string sql, params object[] values)
    {
        DbCommand command = connection.CreateCommand();
        command.CommandText = sql;
        for (int i = 0; i < values.Length; i++)
        {
            DbParameter parameter = command.CreateParameter();
            parameter.ParameterName = $"@p{i}";
            parameter.Value = values[i];
            command.Parameters.Add(parameter);
        }

        return command;
    }

    /// <summary>Runs a command.</summary>
    public void Run(string sql, params object[] values)
    {
        using DbCommand command = Command(sql, values);
        command.ExecuteNonQuery();
    }

    /// <summary>Adds rows to a table, in their order; a store that has a quicker way for many takes it.</summary>
    /// <param name="table">The table.</param>
    /// <param name="columns">Its columns, with commas.</param>
    /// <param name="rows">A value for each column: whole numbers and texts.</param>
    public virtual void Insert(string table, string columns, IEnumerable<object[]> rows)
    {
        int width = columns.Split(',').Length;
        string values = string.Join(", ", Enumerable.Range(0, width).Select(i => $"@p{i}"));
        using DbCommand command = Command($"INSERT INTO {table} ({columns}) VALUES ({values})", [.. Enumerable.Repeat("", width)]);
        foreach (object[] row in rows)
        {
            for (int i = 0; i < width; i++)
            {
                command.Parameters[i].Value = row[i];
            }

            command.ExecuteNonQuery();
        }
    }

    /// <summary>Does something while columns of entries may be changed that are searched and not signed.</summary>
    public void Unguarded(Action work)
    {
        Run(LetGo);
        work();
        Run(HoldFast);
    }

    /// <summary>Lets entries be changed, inside a transaction.</summary>
    protected abstract string LetGo { get; }

    /// <summary>Forbids it again.</summary>
    protected abstract string HoldFast { get; }

    /// <summary>The single value that a question is answered with; null for none.</summary>
    public object? One(string sql, params object[] values)
    {
        using DbCommand command = Command(sql, values);
        return command.ExecuteScalar();
    }

    /// <summary>All rows of an answer: ask for a stretch at a time.</summary>
    public List<T> Rows<T>(Func<DbDataReader, T> read, string sql, params object[] values)
    {
        using DbCommand command = Command(sql, values);
        using DbDataReader row = command.ExecuteReader();
        var rows = new List<T>();
        while (row.Read())
        {
            rows.Add(read(row));
        }

        return rows;
    }

    /// <summary>A cell as text, whatever somebody put there.</summary>
    public static string Text(DbDataReader row, int column) => Convert.ToString(row.GetValue(column), CultureInfo.InvariantCulture) ?? "";

    /// <inheritdoc/>
    public virtual void Dispose() => connection.Dispose();

    private void Confirm(DbTransaction writing)
    {
        try
        {
            writing.Commit();
        }
        catch (Exception error) when (WhenUnconfirmed is { } unknown)
        {
            throw new IOException($"{name}: {unknown}.", error);
        }
    }

    // Over a broken connection not even giving up works; what broke it was said already.
    private static void Release(DbTransaction writing)
    {
        try
        {
            writing.Dispose();
        }
        catch (Exception error) when (error is DbException or InvalidOperationException or IOException) { }
    }
}
