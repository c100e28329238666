using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace Chandlery.Register;

/// <summary>
/// A register in an SQLite file, the witness beside it. SQLite's own journal makes each entry all or nothing, also when the program is
/// killed or the disk is full.
/// </summary>
internal sealed class SqliteStore : RegisterStore
{
    private const int BusySeconds = 20;
    private const int AtOnce = 200;

    private const string EntryStays =
        "CREATE TRIGGER IF NOT EXISTS entry_stays BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;";

    private const string Schema = $"""
        CREATE TABLE IF NOT EXISTS entry (
            number INTEGER PRIMARY KEY, at TEXT NOT NULL, by TEXT NOT NULL, content TEXT NOT NULL,
            previous_hash TEXT NOT NULL, hash TEXT NOT NULL UNIQUE, batch TEXT NOT NULL, subject TEXT NOT NULL);
        CREATE TABLE IF NOT EXISTS declaration (sha256 TEXT PRIMARY KEY, text TEXT NOT NULL) WITHOUT ROWID;
        CREATE TABLE IF NOT EXISTS document (sha256 TEXT PRIMARY KEY, bytes BLOB NOT NULL);
        CREATE TABLE IF NOT EXISTS used_oil (number INTEGER NOT NULL, oil TEXT NOT NULL, name TEXT NOT NULL, document TEXT NOT NULL, revised TEXT NOT NULL);
        CREATE TABLE IF NOT EXISTS held_substance (number INTEGER NOT NULL, name TEXT NOT NULL, cas TEXT NOT NULL);
        CREATE TABLE IF NOT EXISTS issued_ufi (number INTEGER NOT NULL, ufi TEXT NOT NULL, composition TEXT NOT NULL);
        CREATE INDEX IF NOT EXISTS issued_ufi_number ON issued_ufi(number);
        CREATE INDEX IF NOT EXISTS entry_batch ON entry(batch);
        CREATE INDEX IF NOT EXISTS entry_subject ON entry(subject);
        CREATE INDEX IF NOT EXISTS used_oil_number ON used_oil(number);
        CREATE INDEX IF NOT EXISTS held_substance_number ON held_substance(number);
        CREATE INDEX IF NOT EXISTS used_oil_by_oil ON used_oil(oil, number);
        CREATE INDEX IF NOT EXISTS used_oil_by_name ON used_oil(name, number);
        CREATE INDEX IF NOT EXISTS used_oil_by_document ON used_oil(document, number);
        CREATE INDEX IF NOT EXISTS used_oil_by_revised ON used_oil(revised, number);
        CREATE INDEX IF NOT EXISTS held_substance_by_name ON held_substance(name, number);
        CREATE INDEX IF NOT EXISTS held_substance_by_cas ON held_substance(cas, number);
        CREATE INDEX IF NOT EXISTS issued_ufi_by_ufi ON issued_ufi(ufi, composition, number);
        DROP INDEX IF EXISTS issued_ufi_ufi;
        DROP INDEX IF EXISTS used_oil_oil;
        DROP INDEX IF EXISTS held_substance_cas;
        {EntryStays}
        CREATE TABLE IF NOT EXISTS {KnownTexts.Table} (place TEXT NOT NULL, value TEXT NOT NULL, PRIMARY KEY (place, value)) WITHOUT ROWID;
        CREATE TRIGGER IF NOT EXISTS used_oil_known AFTER INSERT ON used_oil BEGIN
            INSERT OR IGNORE INTO {KnownTexts.Table} VALUES ('used_oil.name', NEW.name), ('used_oil.document', NEW.document); END;
        CREATE TRIGGER IF NOT EXISTS held_substance_known AFTER INSERT ON held_substance BEGIN
            INSERT OR IGNORE INTO {KnownTexts.Table} VALUES ('held_substance.name', NEW.name); END;
        CREATE TRIGGER IF NOT EXISTS entry_is_kept BEFORE DELETE ON entry BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        CREATE TRIGGER IF NOT EXISTS declaration_stays BEFORE UPDATE ON declaration BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        CREATE TRIGGER IF NOT EXISTS document_stays BEFORE UPDATE ON document BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        CREATE TRIGGER IF NOT EXISTS document_is_kept BEFORE DELETE ON document BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        CREATE TRIGGER IF NOT EXISTS declaration_is_kept BEFORE DELETE ON declaration BEGIN SELECT RAISE(ABORT, 'the register is only added to'); END;
        """;

    private readonly SqliteConnection connection;
    private readonly Lazy<bool> knowsTexts;

    /// <inheritdoc/>
    protected override string LetGo => "DROP TRIGGER IF EXISTS entry_stays";

    /// <inheritdoc/>
    protected override string HoldFast => EntryStays;

    private SqliteStore(SqliteConnection connection, string path)
        : base(connection, path, Witness.FileOf(path))
    {
        this.connection = connection;
        knowsTexts = new Lazy<bool>(() => HasTable(KnownTexts.Table));
    }

    /// <inheritdoc/>
    public override bool IsWitnessOwed => true;

    /// <inheritdoc/>
    public override bool KnowsTexts => knowsTexts.Value;

    /// <inheritdoc/>
    public override string Line => "rowid";

    /// <summary>Opens a file for adding; makes it when there is none.</summary>
    /// <exception cref="IOException">The file cannot be written, is no register, or another process holds it for too long.</exception>
    public static SqliteStore Open(string path)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        if (!Directory.Exists(folder))
        {
            throw new IOException($"{folder}: there is no such folder for the register.");
        }

        return Opened(
            path,
            SqliteOpenMode.ReadWriteCreate,
            store =>
            {
                store.Run("PRAGMA synchronous = FULL; PRAGMA journal_mode = DELETE;");
                using DbTransaction making = store.BeginAppending();
                bool knowsUfis = store.HasTable("issued_ufi");
                bool knowsTexts = store.HasTable(KnownTexts.Table);
                store.Run(Schema);
                if (!knowsUfis)
                {
                    store.FillUfis();
                }

                if (!knowsTexts)
                {
                    store.FillTexts();
                }

                making.Commit();
            }
        );
    }

    /// <summary>Opens a file for reading.</summary>
    /// <exception cref="IOException">There is no such file, or it is no register.</exception>
    public static SqliteStore OpenToRead(string path)
    {
        if (!File.Exists(path))
        {
            throw new IOException(
                Witness.Of(Witness.FileOf(path)) is { Number: > 0 } witness
                    ? $"{path}: the register is gone: the witness beside it names entry {witness.Number}. Put it back from a copy."
                    : $"{path}: there is no register yet. 'register add' makes one."
            );
        }

        // A program that was killed in the middle of an entry leaves SQLite's journal behind; whoever may write undoes the half entry.
        if (File.Exists(path + "-journal"))
        {
            Opened(path, SqliteOpenMode.ReadWrite, store => store.One("SELECT count(*) FROM sqlite_schema")).Dispose();
        }

        return Opened(
            path,
            SqliteOpenMode.ReadOnly,
            store =>
            {
                // Room for the upper pages of the indexes of a million entries.
                store.Run("PRAGMA cache_size = -16000");
                store.One("SELECT number FROM entry LIMIT 1");
            }
        );
    }

    /// <inheritdoc/>
    public override DbTransaction BeginAppending() => connection.BeginTransaction(deferred: false);

    /// <inheritdoc/>
    public override bool HasTable(string table) => One("SELECT 1 FROM sqlite_schema WHERE name = @p0", table) is not null;

    /// <summary>Copies the whole file, consistent even while others write.</summary>
    public void CopyTo(string path) =>
        Guarded(() =>
        {
            using var copy = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
            copy.Open();

            // A writer who is just finishing is waited for by reading, not by copying.
            using SqliteTransaction reading = connection.BeginTransaction(deferred: true);
            One("SELECT number FROM entry LIMIT 1");
            connection.BackupDatabase(copy);
        });

    private static SqliteStore Opened(string path, SqliteOpenMode mode, Action<SqliteStore> first)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder
            {
                DataSource = path,
                Mode = mode,
                DefaultTimeout = BusySeconds,
                Pooling = false,
            }.ToString()
        );
        var store = new SqliteStore(connection, path);
        try
        {
            return store.Guarded(() =>
            {
                connection.Open();
                first(store);
                return store;
            });
        }
        catch
        {
            store.Dispose();
            throw;
        }
    }

    // Nor has it the table of texts: it is made from the rows that are searched.
    private void FillTexts()
    {
        foreach ((string table, string column) in KnownTexts.Columns)
        {
            Run(
                $"INSERT OR IGNORE INTO {KnownTexts.Table} {KnownTexts.Steps(table, column)} SELECT @p0, value FROM step WHERE value IS NOT NULL",
                KnownTexts.PlaceOf(table, column)
            );
        }
    }

    // A register of an older program has no table of UFIs yet: it is made from what is signed.
    private void FillUfis()
    {
        long last = 0;
        while (
            Rows(SignedEntry.Read, $"SELECT {SignedEntry.Columns} FROM entry WHERE number > @p0 ORDER BY number LIMIT {AtOnce}", last)
                is { Count: > 0 } entries
        )
        {
            foreach (SignedEntry entry in entries)
            {
                if (entry.Says() is { } content && SearchedRows.UfiOf(content) is { } issued)
                {
                    Run("INSERT INTO issued_ufi VALUES (@p0, @p1, @p2)", entry.Number, issued.Ufi, issued.Composition);
                }
            }

            last = entries[^1].Number;
        }
    }

    /// <inheritdoc/>
    protected override string? InWords(Exception error) =>
        error switch
        {
            SqliteException sqlite => sqlite.SqliteErrorCode switch
            {
                5 or 6 => "another program holds it; try again in a moment",
                8 => "it cannot be written (read-only file or folder)",
                13 => "the disk is full; nothing was written",
                14 => "it cannot be opened; see that the folder exists and that you may write there",
                11 or 26 => "it is damaged, or no register; restore the last backup",
                1 => "it is no register",
                _ => error.Message,
            },
            UnauthorizedAccessException => error.Message.TrimEnd('.'),
            _ => null,
        };
}
