using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Chandlery.Core.Declared;
using Microsoft.Data.Sqlite;

namespace Chandlery.Register;

/// <summary>
/// The register: an SQLite file that is only ever added to. Every entry carries the hash of the one before it, so that a
/// changed or removed entry shows. SQLite's own journal makes each entry all or nothing, also when the program is killed
/// or the disk is full.
/// </summary>
public sealed class RegisterFile : IDisposable
{
    private const int BusySeconds = 20;
    private static readonly string FirstPreviousHash = new('0', 64);

    private const string Schema = """
        CREATE TABLE IF NOT EXISTS entry (
            number INTEGER PRIMARY KEY, at TEXT NOT NULL, by TEXT NOT NULL, content TEXT NOT NULL,
            previous_hash TEXT NOT NULL, hash TEXT NOT NULL UNIQUE, batch TEXT NOT NULL, subject TEXT NOT NULL);
        CREATE TABLE IF NOT EXISTS declaration (sha256 TEXT PRIMARY KEY, text TEXT NOT NULL) WITHOUT ROWID;
        CREATE TABLE IF NOT EXISTS used_oil (number INTEGER NOT NULL, oil TEXT NOT NULL, name TEXT NOT NULL, document TEXT NOT NULL, revised TEXT NOT NULL);
        CREATE TABLE IF NOT EXISTS held_substance (number INTEGER NOT NULL, name TEXT NOT NULL, cas TEXT NOT NULL);
        CREATE TABLE IF NOT EXISTS issued_ufi (number INTEGER NOT NULL, ufi TEXT NOT NULL, composition TEXT NOT NULL);
        CREATE INDEX IF NOT EXISTS issued_ufi_ufi ON issued_ufi(ufi);
        CREATE INDEX IF NOT EXISTS issued_ufi_number ON issued_ufi(number);
        CREATE INDEX IF NOT EXISTS entry_batch ON entry(batch);
        CREATE INDEX IF NOT EXISTS entry_subject ON entry(subject);
        CREATE INDEX IF NOT EXISTS used_oil_oil ON used_oil(oil);
        CREATE INDEX IF NOT EXISTS held_substance_cas ON held_substance(cas);
        CREATE INDEX IF NOT EXISTS used_oil_number ON used_oil(number);
        CREATE INDEX IF NOT EXISTS held_substance_number ON held_substance(number);
        CREATE TRIGGER IF NOT EXISTS entry_stays BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        CREATE TRIGGER IF NOT EXISTS entry_is_kept BEFORE DELETE ON entry BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        CREATE TRIGGER IF NOT EXISTS declaration_stays BEFORE UPDATE ON declaration BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        CREATE TRIGGER IF NOT EXISTS declaration_is_kept BEFORE DELETE ON declaration BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        """;

    private readonly SqliteConnection connection;
    private readonly string path;

    private RegisterFile(SqliteConnection connection, string path)
    {
        this.connection = connection;
        this.path = path;
    }

    /// <summary>Opens the register for adding; makes it when there is none.</summary>
    /// <exception cref="IOException">The file cannot be written, is no register, or another process holds it for too long.</exception>
    public static RegisterFile Open(string path) => Open(path, SqliteOpenMode.ReadWriteCreate);

    /// <summary>Opens the register for reading.</summary>
    /// <exception cref="IOException">There is no such file, or it is no register.</exception>
    public static RegisterFile OpenToRead(string path)
    {
        if (!File.Exists(path))
        {
            throw new IOException($"{path}: there is no register yet. 'register add' makes one.");
        }

        RollBackUnfinished(path);
        return Open(path, SqliteOpenMode.ReadOnly);
    }

    // A program that was killed in the middle of an entry leaves SQLite's journal behind; whoever may write undoes the half entry.
    private static void RollBackUnfinished(string path)
    {
        if (!File.Exists(path + "-journal"))
        {
            return;
        }

        using SqliteConnection connection = Connect(path, SqliteOpenMode.ReadWrite);
        Guarded(
            path,
            () =>
            {
                connection.Open();
                using SqliteCommand look = connection.CreateCommand();
                look.CommandText = "SELECT count(*) FROM sqlite_schema";
                return look.ExecuteScalar();
            }
        );
    }

    private static SqliteConnection Connect(string path, SqliteOpenMode mode) =>
        new(
            new SqliteConnectionStringBuilder
            {
                DataSource = path,
                Mode = mode,
                DefaultTimeout = BusySeconds,
                Pooling = false,
            }.ToString()
        );

    private static RegisterFile Open(string path, SqliteOpenMode mode)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        if (mode == SqliteOpenMode.ReadWriteCreate && !Directory.Exists(folder))
        {
            throw new IOException($"{folder}: there is no such folder for the register.");
        }

        SqliteConnection connection = Connect(path, mode);
        return Guarded(
            path,
            () =>
            {
                connection.Open();
                var register = new RegisterFile(connection, path);
                if (mode == SqliteOpenMode.ReadWriteCreate)
                {
                    register.Run("PRAGMA synchronous = FULL; PRAGMA journal_mode = DELETE;");
                    register.Run("BEGIN IMMEDIATE;");
                    bool knowsUfis = register.HasTable("issued_ufi");
                    register.Run(Schema);
                    if (!knowsUfis)
                    {
                        register.FillUfis();
                    }

                    register.Run("COMMIT;");
                }
                else
                {
                    register.Run("SELECT number FROM entry LIMIT 1;");
                }

                return register;
            },
            connection.Dispose
        );
    }

    /// <summary>Adds an entry.</summary>
    /// <param name="content">What it says.</param>
    /// <param name="declarations">Texts of the declarations by hash; kept once however often they are used.</param>
    /// <param name="by">Who issues the documents.</param>
    /// <param name="at">When.</param>
    /// <exception cref="IOException">It could not be written; then nothing was.</exception>
    public RegisterEntry Add(RegisterContent content, IReadOnlyDictionary<string, string> declarations, string by, DateTimeOffset at) =>
        Guarded(
            path,
            () =>
            {
                using SqliteTransaction transaction = connection.BeginTransaction(deferred: false);
                (long last, string previous, string lastAt) = Last();
                string json = JsonSerializer.Serialize(content, RegisterJson.Default.RegisterContent);
                string moment = at.ToUniversalTime().ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture);
                if (string.CompareOrdinal(moment, lastAt) < 0)
                {
                    throw new IOException(
                        $"{path}: this machine's clock says {moment}, and the last entry was made {lastAt}: set the clock right; nothing was written."
                    );
                }

                string hash = HashOf(last + 1, moment, by, json, previous);
                foreach ((string sha256, string text) in declarations)
                {
                    Run("INSERT OR IGNORE INTO declaration (sha256, text) VALUES ($0, $1)", sha256, text);
                }

                Run(
                    "INSERT INTO entry (number, at, by, content, previous_hash, hash, batch, subject) VALUES ($0, $1, $2, $3, $4, $5, $6, $7)",
                    last + 1,
                    moment,
                    by,
                    json,
                    previous,
                    hash,
                    content.Batch,
                    content.Subject
                );
                foreach ((string table, string[] cells) in SearchedRows.Of(content))
                {
                    Run($"INSERT INTO {table} VALUES ($0, {string.Join(", ", cells.Select((_, i) => $"${i + 1}"))})", [last + 1, .. cells]);
                }

                transaction.Commit();
                WriteWitness();
                return new RegisterEntry(last + 1, moment, by, content, previous, hash);
            }
        );

    /// <summary>What is odd about an entry before it is made: the same batch again, or its UFI on another composition.</summary>
    public IReadOnlyList<string> Doubts(RegisterContent content) =>
        Guarded(
            path,
            () =>
            {
                var doubts = new List<string>();
                using (
                    SqliteCommand twin = Command(
                        "SELECT number, content FROM entry WHERE batch = $0 AND subject = $1",
                        content.Batch,
                        content.Subject
                    )
                )
                using (SqliteDataReader row = twin.ExecuteReader())
                {
                    while (row.Read())
                    {
                        if (Parse(Text(row, 1)) is { } other && other.Edition == content.Edition)
                        {
                            doubts.Add($"batch {content.Batch} stands in entry {row.GetInt64(0)} already, under the same law");
                        }
                    }
                }

                if (SearchedRows.UfiOf(content) is { } issued)
                {
                    using SqliteCommand same = Command(
                        "SELECT DISTINCT number FROM issued_ufi WHERE ufi = $0 AND composition <> $1 ORDER BY number",
                        issued.Ufi,
                        issued.Composition
                    );
                    using SqliteDataReader row = same.ExecuteReader();
                    while (row.Read())
                    {
                        doubts.Add(
                            $"UFI {issued.Ufi} stands in entry {row.GetInt64(0)} with another composition: give this one a formulation number of its own"
                        );
                    }
                }

                return doubts;
            }
        );

    /// <summary>Entries that match, oldest first. A damaged one throws; see <see cref="Stream"/>.</summary>
    public IReadOnlyList<RegisterEntry> Find(RegisterQuery query) =>
        [.. Stream(query, number => throw new IOException($"{path}: entry {number} is damaged; 'register verify' says more."))];

    /// <summary>Entries that match, oldest first, one after the other: however many there are, one is held at a time.</summary>
    /// <param name="query">What to look for.</param>
    /// <param name="damaged">Told the number of an entry that cannot be read; the others follow.</param>
    public IEnumerable<RegisterEntry> Stream(RegisterQuery query, Action<long> damaged)
    {
        using SqliteCommand command = Guarded(path, () => SearchCommand(query));
        using SqliteDataReader row = Guarded(path, command.ExecuteReader);
        while (Guarded(path, row.Read))
        {
            long number = row.GetInt64(0);
            if (Parse(Text(row, 3)) is { } content)
            {
                yield return new RegisterEntry(number, Text(row, 1), Text(row, 2), content, Text(row, 4), Text(row, 5));
            }
            else
            {
                damaged(number);
            }
        }
    }

    private SqliteCommand SearchCommand(RegisterQuery query)
    {
        SqliteCommand command = connection.CreateCommand();
        var conditions = new List<string> { "1 = 1" };
        void Add(string? value, string condition)
        {
            if (value is not null)
            {
                conditions.Add(condition.Replace("?", $"${command.Parameters.Count}", StringComparison.Ordinal));
                command.Parameters.AddWithValue($"${command.Parameters.Count}", value);
            }
        }

        // A number or a whole name is looked up; only a part of a name is searched for in all rows.
        Add(query.Batch, "number IN (SELECT number FROM entry WHERE batch = ? UNION SELECT number FROM entry WHERE subject = ?)");
        Add(
            query.Substance,
            CasNumber.Parse(query.Substance ?? "").Success
                ? "number IN (SELECT number FROM held_substance WHERE cas = ?)"
                : "number IN (SELECT number FROM held_substance WHERE instr(lower(name), lower(?)) > 0)"
        );
        Add(
            query.Oil,
            query.Oil is { } oil && Command("SELECT 1 FROM used_oil WHERE oil = $0 LIMIT 1", oil).ExecuteScalar() is not null
                ? "number IN (SELECT number FROM used_oil WHERE oil = ?)"
                : "number IN (SELECT number FROM used_oil WHERE instr(lower(name), lower(?)) > 0)"
        );
        Add(query.Document, "number IN (SELECT number FROM used_oil WHERE instr(lower(document), lower(?)) > 0)");
        Add(query.Revised, "number IN (SELECT number FROM used_oil WHERE revised = ?)");
        command.CommandText =
            $"SELECT number, at, by, content, previous_hash, hash FROM entry WHERE {string.Join(" AND ", conditions)} ORDER BY number";
        return command;
    }

    /// <summary>Number and hash of the last entry; 0 and zeros when there is none.</summary>
    public (long Number, string Hash) Head() => Guarded(path, () => (Last().Number, Last().Hash));

    /// <summary>
    /// Checks every hash, and that every column and table that is searched says what the signed content says; the result is empty when
    /// nothing was changed. One entry is held at a time.
    /// </summary>
    public IReadOnlyList<string> Verify() =>
        Guarded(path, () => new RegisterCheck(connection, FirstPreviousHash, HashOf).Run(Witness.Of(path)));

    /// <summary>Text of a declaration as it was used; null when the register does not hold it.</summary>
    public string? Declaration(string sha256) =>
        Guarded(
            path,
            () =>
            {
                using SqliteCommand command = Command("SELECT text FROM declaration WHERE sha256 = $0", sha256);
                return command.ExecuteScalar() as string;
            }
        );

    /// <summary>Copies the whole register, consistent even while others write, and puts the copy in place in one step.</summary>
    /// <exception cref="IOException">The copy cannot be written; an older copy of that name is untouched.</exception>
    public void BackUp(string path)
    {
        string temporary = $"{path}.{Guid.NewGuid():N}.tmp";
        try
        {
            Guarded(
                path,
                () =>
                {
                    using var copy = new SqliteConnection(
                        new SqliteConnectionStringBuilder { DataSource = temporary, Pooling = false }.ToString()
                    );
                    copy.Open();
                    connection.BackupDatabase(copy);
                    return true;
                }
            );
            File.Move(temporary, path, overwrite: true);
            Witness.Write(path, Head());
        }
        catch
        {
            File.Delete(temporary);
            throw;
        }
    }

    /// <summary>For tests: lets SQLite find the disk full at the file's present size.</summary>
    internal void LimitToPresentSize() => Run("PRAGMA max_page_count = 1;");

    /// <summary>Hash of a text, in hexadecimal.</summary>
    public static string Sha256(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    /// <inheritdoc/>
    public void Dispose() => connection.Dispose();

    private (long Number, string Hash, string At) Last()
    {
        using SqliteCommand command = Command("SELECT number, hash, at FROM entry ORDER BY number DESC LIMIT 1");
        using SqliteDataReader reader = command.ExecuteReader();
        return reader.Read() ? (reader.GetInt64(0), Text(reader, 1), Text(reader, 2)) : (0, FirstPreviousHash, "");
    }

    // Under the lock of a writer, so that of two who have just added the later one is witnessed. The entry stands already: a witness
    // that cannot be written lags behind until the next one.
    private void WriteWitness()
    {
        try
        {
            using SqliteTransaction transaction = connection.BeginTransaction(deferred: false);
            Witness.Write(path, Head());
            transaction.Rollback();
        }
        catch (Exception error) when (error is IOException or SqliteException) { }
    }

    private bool HasTable(string name) => Command("SELECT 1 FROM sqlite_schema WHERE name = $0", name).ExecuteScalar() is not null;

    // A register of an older program has no table of UFIs yet: it is made from what is signed.
    private void FillUfis()
    {
        var rows = new List<(long Number, string[] Cells)>();
        using (SqliteCommand entries = Command("SELECT number, content FROM entry ORDER BY number"))
        using (SqliteDataReader row = entries.ExecuteReader())
        {
            while (row.Read())
            {
                if (Parse(Text(row, 1)) is { } content && SearchedRows.UfiOf(content) is { } issued)
                {
                    rows.Add((row.GetInt64(0), [issued.Ufi, issued.Composition]));
                }
            }
        }

        foreach ((long number, string[] cells) in rows)
        {
            Run("INSERT INTO issued_ufi VALUES ($0, $1, $2)", [number, .. cells]);
        }
    }

    /// <summary>A cell as text, whatever somebody put there.</summary>
    internal static string Text(SqliteDataReader row, int column) =>
        Convert.ToString(row.GetValue(column), CultureInfo.InvariantCulture) ?? "";

    /// <summary>The content of an entry; null when it is damaged.</summary>
    internal static RegisterContent? Parse(string json)
    {
        try
        {
            RegisterContent? content = JsonSerializer.Deserialize(json, RegisterJson.Default.RegisterContent);
            return
                content
                    is {
                        Batch: not null,
                        Subject: not null,
                        Result: not null,
                        Declarations: not null,
                        Oils: not null,
                        Substances: not null
                    }
                ? content
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    // Lengths before the parts keep two different entries from reading the same.
    private static string HashOf(long number, string at, string by, string content, string previous) =>
        Sha256(
            string.Concat(new[] { number.ToString(CultureInfo.InvariantCulture), at, by, content, previous }.Select(p => $"{p.Length}:{p}"))
        );

    private SqliteCommand Command(string sql, params object[] values)
    {
        SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        for (int i = 0; i < values.Length; i++)
        {
            command.Parameters.AddWithValue($"${i}", values[i]);
        }

        return command;
    }

    private void Run(string sql, params object[] values)
    {
        using SqliteCommand command = Command(sql, values);
        command.ExecuteNonQuery();
    }

    private static T Guarded<T>(string path, Func<T> work, Action? onFailure = null)
    {
        try
        {
            return work();
        }
        catch (Exception error) when (error is SqliteException or JsonException or UnauthorizedAccessException)
        {
            onFailure?.Invoke();
            string what = (error as SqliteException)?.SqliteErrorCode switch
            {
                5 or 6 => "another program holds it; try again in a moment",
                8 => "it cannot be written (read-only file or folder)",
                13 => "the disk is full; nothing was written",
                14 => "it cannot be opened; see that the folder exists and that you may write there",
                11 or 26 => "it is damaged, or no register; restore the last backup",
                1 => "it is no register",
                _ => error.Message,
            };
            throw new IOException($"{path}: {what}.", error);
        }
    }
}
