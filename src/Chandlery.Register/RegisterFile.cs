using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
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
        CREATE INDEX IF NOT EXISTS used_oil_number ON used_oil(number);
        CREATE INDEX IF NOT EXISTS held_substance_number ON held_substance(number);
        CREATE TRIGGER IF NOT EXISTS entry_stays BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        CREATE TRIGGER IF NOT EXISTS entry_is_kept BEFORE DELETE ON entry BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        CREATE TRIGGER IF NOT EXISTS declaration_stays BEFORE UPDATE ON declaration BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        CREATE TRIGGER IF NOT EXISTS declaration_is_kept BEFORE DELETE ON declaration BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        """;

    private readonly SqliteConnection connection;

    private RegisterFile(SqliteConnection connection) => this.connection = connection;

    /// <summary>Opens the register for adding; makes it when there is none.</summary>
    /// <exception cref="IOException">The file cannot be written, is no register, or another process holds it for too long.</exception>
    public static RegisterFile Open(string path) => Open(path, SqliteOpenMode.ReadWriteCreate);

    /// <summary>Opens the register for reading.</summary>
    /// <exception cref="IOException">There is no such file, or it is no register.</exception>
    public static RegisterFile OpenToRead(string path) =>
        File.Exists(path)
            ? Open(path, SqliteOpenMode.ReadOnly)
            : throw new IOException($"{path}: there is no register yet. 'register add' makes one.");

    private static RegisterFile Open(string path, SqliteOpenMode mode)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        if (mode == SqliteOpenMode.ReadWriteCreate && !Directory.Exists(folder))
        {
            throw new IOException($"{folder}: there is no such folder for the register.");
        }

        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder
            {
                DataSource = path,
                Mode = mode,
                DefaultTimeout = BusySeconds,
                Pooling = false,
            }.ToString()
        );
        return Guarded(
            path,
            () =>
            {
                connection.Open();
                var register = new RegisterFile(connection);
                if (mode == SqliteOpenMode.ReadWriteCreate)
                {
                    register.Run("PRAGMA synchronous = FULL; PRAGMA journal_mode = DELETE;");
                    register.Run("BEGIN IMMEDIATE;");
                    register.Run(Schema);
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
            connection.DataSource,
            () =>
            {
                using SqliteTransaction transaction = connection.BeginTransaction(deferred: false);
                (long last, string previous) = Last();
                string json = JsonSerializer.Serialize(content, RegisterJson.Default.RegisterContent);
                string moment = at.ToUniversalTime().ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture);
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
                foreach (UsedOil oil in content.Oils)
                {
                    Run("INSERT INTO used_oil VALUES ($0, $1, $2, $3, $4)", last + 1, oil.Oil, oil.Name, oil.Document, oil.Revised);
                }

                foreach (HeldSubstance substance in content.Substances)
                {
                    Run("INSERT INTO held_substance VALUES ($0, $1, $2)", last + 1, substance.Name, substance.Cas);
                }

                transaction.Commit();
                return new RegisterEntry(last + 1, moment, by, content, previous, hash);
            }
        );

    /// <summary>Entries that match, oldest first.</summary>
    public IReadOnlyList<RegisterEntry> Find(RegisterQuery query) =>
        Guarded(
            connection.DataSource,
            () =>
            {
                using SqliteCommand command = connection.CreateCommand();
                var conditions = new List<string> { "1 = 1" };
                void Add(string? value, string condition)
                {
                    if (value is not null)
                    {
                        conditions.Add(condition.Replace("?", $"${command.Parameters.Count}", StringComparison.Ordinal));
                        command.Parameters.AddWithValue($"${command.Parameters.Count}", value);
                    }
                }

                Add(query.Batch, "(batch = ? OR subject = ?)");
                Add(query.Substance, "number IN (SELECT number FROM held_substance WHERE cas = ? OR instr(lower(name), lower(?)) > 0)");
                Add(query.Oil, "number IN (SELECT number FROM used_oil WHERE oil = ? OR instr(lower(name), lower(?)) > 0)");
                Add(query.Document, "number IN (SELECT number FROM used_oil WHERE instr(lower(document), lower(?)) > 0)");
                Add(query.Revised, "number IN (SELECT number FROM used_oil WHERE revised = ?)");
                command.CommandText =
                    $"SELECT number, at, by, content, previous_hash, hash FROM entry WHERE {string.Join(" AND ", conditions)} ORDER BY number";
                var entries = new List<RegisterEntry>();
                using SqliteDataReader reader = command.ExecuteReader();
                while (reader.Read())
                {
                    RegisterContent content =
                        JsonSerializer.Deserialize(reader.GetString(3), RegisterJson.Default.RegisterContent)
                        ?? throw new IOException($"Entry {reader.GetInt64(0)} of the register is empty.");
                    entries.Add(
                        new RegisterEntry(
                            reader.GetInt64(0),
                            reader.GetString(1),
                            reader.GetString(2),
                            content,
                            reader.GetString(4),
                            reader.GetString(5)
                        )
                    );
                }

                return entries;
            }
        );

    /// <summary>Checks every hash; the result is empty when nothing was changed.</summary>
    public IReadOnlyList<string> Verify() =>
        Guarded(
            connection.DataSource,
            () =>
            {
                var wrong = new List<string>();
                var held = new Dictionary<string, string>();
                using (SqliteCommand texts = Command("SELECT sha256, text FROM declaration"))
                using (SqliteDataReader reader = texts.ExecuteReader())
                {
                    while (reader.Read())
                    {
                        held[reader.GetString(0)] = Sha256(reader.GetString(1));
                    }
                }

                wrong.AddRange(held.Where(h => h.Key != h.Value).Select(h => $"the declaration {h.Key} was changed"));
                string previous = FirstPreviousHash;
                long expected = 1;
                using SqliteCommand entries = Command("SELECT number, at, by, content, previous_hash, hash FROM entry ORDER BY number");
                using SqliteDataReader row = entries.ExecuteReader();
                while (row.Read())
                {
                    long number = row.GetInt64(0);
                    if (number != expected)
                    {
                        wrong.Add($"entry {expected} is missing");
                    }

                    if (row.GetString(4) != previous)
                    {
                        wrong.Add($"entry {number} does not follow the one before it");
                    }

                    if (HashOf(number, row.GetString(1), row.GetString(2), row.GetString(3), row.GetString(4)) != row.GetString(5))
                    {
                        wrong.Add($"entry {number} was changed");
                    }

                    RegisterContent? content = JsonSerializer.Deserialize(row.GetString(3), RegisterJson.Default.RegisterContent);
                    wrong.AddRange(
                        (content?.Declarations ?? [])
                            .Where(d => !held.ContainsKey(d.Sha256))
                            .Select(d => $"entry {number}: the text of {d.Path} is missing")
                    );
                    previous = row.GetString(5);
                    expected = number + 1;
                }

                return wrong;
            }
        );

    /// <summary>Text of a declaration as it was used; null when the register does not hold it.</summary>
    public string? Declaration(string sha256) =>
        Guarded(
            connection.DataSource,
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

    private (long Number, string Hash) Last()
    {
        using SqliteCommand command = Command("SELECT number, hash FROM entry ORDER BY number DESC LIMIT 1");
        using SqliteDataReader reader = command.ExecuteReader();
        return reader.Read() ? (reader.GetInt64(0), reader.GetString(1)) : (0, FirstPreviousHash);
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
