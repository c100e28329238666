using System.Data.Common;
using System.Globalization;
using System.Net.Sockets;
using Npgsql;
using NpgsqlTypes;

namespace Chandlery.Register;

/// <summary>
/// A register in a PostgreSQL database that several benches share. The server's log makes each entry all or nothing; a lock of the
/// database lets one bench add at a time, and no entry can follow one that another follows already.
/// </summary>
internal sealed class PostgresStore : RegisterStore
{
    private const int BusySeconds = 20;
    private const int AnswerSeconds = 60;
    private const int ManyRows = 8;

    // Any number will do that no other program locks in the same database: the letters of "chandler" as bytes.
    internal const long AppendLock = 0x6368_616E_646C_6572;

    private const string EntryStays = "CREATE TRIGGER entry_stays BEFORE UPDATE ON entry EXECUTE FUNCTION only_added_to();";

    private const string Schema = $"""
        CREATE TABLE entry (
            number bigint PRIMARY KEY, at text NOT NULL, by text NOT NULL, content text NOT NULL, previous_hash text NOT NULL UNIQUE,
            hash text NOT NULL UNIQUE, batch text COLLATE "C" NOT NULL, subject text COLLATE "C" NOT NULL);
        CREATE TABLE declaration (sha256 text COLLATE "C" PRIMARY KEY, text text NOT NULL);
        CREATE TABLE document (sha256 text COLLATE "C" PRIMARY KEY, bytes bytea NOT NULL);
        CREATE INDEX entry_batch ON entry(batch, number);
        CREATE INDEX entry_subject ON entry(subject, number);
        CREATE FUNCTION only_added_to() RETURNS trigger LANGUAGE plpgsql AS
            $$ BEGIN RAISE EXCEPTION 'the register is only added to'; END $$;
        {EntryStays}
        CREATE TRIGGER entry_is_kept BEFORE DELETE OR TRUNCATE ON entry EXECUTE FUNCTION only_added_to();
        CREATE TRIGGER document_stays BEFORE UPDATE ON document EXECUTE FUNCTION only_added_to();
        CREATE TRIGGER document_is_kept BEFORE DELETE OR TRUNCATE ON document EXECUTE FUNCTION only_added_to();
        CREATE TRIGGER declaration_stays BEFORE UPDATE ON declaration EXECUTE FUNCTION only_added_to();
        CREATE TRIGGER declaration_is_kept BEFORE DELETE OR TRUNCATE ON declaration EXECUTE FUNCTION only_added_to();
        """;

    private const string SearchedSchema = """
        CREATE TABLE IF NOT EXISTS used_oil (
            number bigint NOT NULL, oil text COLLATE "C" NOT NULL, name text COLLATE "C" NOT NULL, document text COLLATE "C" NOT NULL,
            revised text COLLATE "C" NOT NULL, line bigint GENERATED ALWAYS AS IDENTITY);
        CREATE TABLE IF NOT EXISTS held_substance (
            number bigint NOT NULL, name text COLLATE "C" NOT NULL, cas text COLLATE "C" NOT NULL, line bigint GENERATED ALWAYS AS IDENTITY);
        CREATE TABLE IF NOT EXISTS issued_ufi (
            number bigint NOT NULL, ufi text COLLATE "C" NOT NULL, composition text COLLATE "C" NOT NULL,
            line bigint GENERATED ALWAYS AS IDENTITY);
        CREATE INDEX IF NOT EXISTS used_oil_number ON used_oil(number, line);
        CREATE INDEX IF NOT EXISTS used_oil_by_oil ON used_oil(oil, number);
        CREATE INDEX IF NOT EXISTS used_oil_by_name ON used_oil(name, number);
        CREATE INDEX IF NOT EXISTS used_oil_by_document ON used_oil(document, number);
        CREATE INDEX IF NOT EXISTS used_oil_by_revised ON used_oil(revised, number);
        CREATE INDEX IF NOT EXISTS held_substance_number ON held_substance(number, line);
        CREATE INDEX IF NOT EXISTS held_substance_by_name ON held_substance(name, number);
        CREATE INDEX IF NOT EXISTS held_substance_by_cas ON held_substance(cas, number);
        CREATE INDEX IF NOT EXISTS issued_ufi_number ON issued_ufi(number, line);
        CREATE INDEX IF NOT EXISTS issued_ufi_by_ufi ON issued_ufi(ufi, composition, number);
        """;

    private readonly NpgsqlDataSource source;
    private readonly NpgsqlConnection connection;

    private PostgresStore(NpgsqlDataSource source, NpgsqlConnection connection, string name, string? witness)
        : base(connection, name, witness)
    {
        this.source = source;
        this.connection = connection;
    }

    /// <inheritdoc/>
    protected override string LetGo => "DROP TRIGGER IF EXISTS entry_stays ON entry";

    /// <inheritdoc/>
    protected override string HoldFast => EntryStays;

    /// <inheritdoc/>
    public override bool IsWitnessOwed => false;

    /// <inheritdoc/>
    public override string Line => "line";

    /// <inheritdoc/>
    public override string? WhenUnconfirmed =>
        "the connection broke before the server confirmed what was entered, so it may stand or not: look with 'register find' before you enter it again";

    /// <summary>Opens a database for adding; lays the register out in it when there is none.</summary>
    /// <param name="connectionString">Where it is.</param>
    /// <param name="witness">Where the witness is kept; null for nowhere.</param>
    /// <exception cref="IOException">The server cannot be reached or refuses; the message says why.</exception>
    public static PostgresStore Open(string connectionString, string? witness) =>
        Opened(
            connectionString,
            witness,
            store =>
            {
                if (store.HasTable("entry") && SearchedRows.Tables.Keys.All(store.HasTable))
                {
                    return;
                }

                using DbTransaction making = store.BeginAppending();
                if (!store.HasTable("entry"))
                {
                    store.Run(Schema);
                }

                store.Run(SearchedSchema);
                making.Commit();
            }
        );

    /// <summary>Opens a database for reading.</summary>
    /// <param name="connectionString">Where it is.</param>
    /// <param name="witness">Where the witness is kept; null for nowhere.</param>
    /// <exception cref="IOException">The server cannot be reached or refuses, or there is no register.</exception>
    public static PostgresStore OpenToRead(string connectionString, string? witness) =>
        Opened(connectionString, witness, store => store.One("SELECT number FROM entry LIMIT 1"));

    /// <inheritdoc/>
    public override DbTransaction BeginAppending()
    {
        NpgsqlTransaction transaction = connection.BeginTransaction();
        Run(string.Create(CultureInfo.InvariantCulture, $"SET LOCAL lock_timeout = '{BusySeconds}s'"));
        Run("SELECT pg_advisory_xact_lock(@p0)", AppendLock);
        return transaction;
    }

    // A statement a row waits for the server each time: many rows go in one stream instead, inside the same transaction.
    /// <inheritdoc/>
    public override void Insert(string table, string columns, IEnumerable<object[]> rows)
    {
        List<object[]> all = [.. rows];
        if (all.Count < ManyRows)
        {
            base.Insert(table, columns, all);
            return;
        }

        using NpgsqlBinaryImporter stream = connection.BeginBinaryImport($"COPY {table} ({columns}) FROM STDIN (FORMAT BINARY)");
        foreach (object[] row in all)
        {
            stream.StartRow();
            foreach (object value in row)
            {
                if (value is long number)
                {
                    stream.Write(number, NpgsqlDbType.Bigint);
                }
                else
                {
                    stream.Write((string)value, NpgsqlDbType.Text);
                }
            }
        }

        stream.Complete();
    }

    // From the table of tables as it is now: what the server remembers of a name may be older than the lock that was waited for.
    /// <inheritdoc/>
    public override bool HasTable(string table) =>
        One("SELECT 1 FROM pg_class WHERE relname = @p0 AND relnamespace = current_schema()::regnamespace", table) is not null;

    /// <inheritdoc/>
    public override void Dispose()
    {
        base.Dispose();
        source.Dispose();
    }

    private static PostgresStore Opened(string connectionString, string? witness, Action<PostgresStore> first)
    {
        PostgresStore store;
        try
        {
            var settings = new NpgsqlConnectionStringBuilder(connectionString) { Pooling = false, CommandTimeout = AnswerSeconds };
            var builder = new NpgsqlSlimDataSourceBuilder(settings.ConnectionString);
            builder.EnableTransportSecurity();
            NpgsqlDataSource source = builder.Build();
            store = new PostgresStore(source, source.CreateConnection(), NameOf(settings), witness);
        }
        catch (Exception error) when (error is ArgumentException or FormatException or NotSupportedException)
        {
            throw new IOException(
                $"The connection string of the register cannot be read: {error.Message.TrimEnd('.')}. Write it like Host=bench-server;Database=register;Username=maker.",
                error
            );
        }

        try
        {
            return store.Guarded(() =>
            {
                store.connection.Open();

                // What is acknowledged is on the server's disk, whatever the server's own setting.
                store.Run("SET synchronous_commit = on");
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

    // Without user and password: messages are shown, and may be sent on.
    private static string NameOf(NpgsqlConnectionStringBuilder settings) => $"register '{settings.Database}' on {settings.Host}";

    /// <inheritdoc/>
    protected override string? InWords(Exception error) =>
        error switch
        {
            PostgresException refused => refused.SqlState switch
            {
                PostgresErrorCodes.InvalidPassword or PostgresErrorCodes.InvalidAuthorizationSpecification =>
                    "the server knows no such user with this password; give it in the variable PGPASSWORD or in a password file (PGPASSFILE)",
                PostgresErrorCodes.InvalidCatalogName => "the server has no such database; make an empty one with createdb",
                PostgresErrorCodes.UndefinedTable => "there is no register yet; 'register add' makes one",
                PostgresErrorCodes.InsufficientPrivilege => $"this user may not do that there ({refused.MessageText})",
                PostgresErrorCodes.LockNotAvailable => "another bench holds it; try again in a moment",
                PostgresErrorCodes.DiskFull => "the server's disk is full; nothing was written",
                PostgresErrorCodes.UniqueViolation => "another entry stands there already; nothing was written, try again",
                PostgresErrorCodes.AdminShutdown or PostgresErrorCodes.CrashShutdown or PostgresErrorCodes.CannotConnectNow =>
                    "the server is stopping or starting; nothing was written, try again in a moment",
                PostgresErrorCodes.TooManyConnections => "too many benches are connected at once; try again in a moment",
                _ => refused.MessageText,
            },
            NpgsqlException { InnerException: SocketException } =>
                "the server cannot be reached; see that it runs and that the network does",
            NpgsqlException { InnerException: TimeoutException } => "the server does not answer; see that the network works",
            NpgsqlException { InnerException: IOException or null } => "the connection to the server broke; nothing was written",
            NpgsqlException { InnerException: { } inner } => $"the connection to the server failed: {inner.Message.TrimEnd('.')}",
            SocketException => "the server cannot be reached; see that it runs and that the network does",
            TimeoutException => "the server does not answer; see that the network works",
            _ => null,
        };
}
