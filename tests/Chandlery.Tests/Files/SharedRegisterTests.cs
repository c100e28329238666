using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Chandlery.Register;
using Chandlery.Tests.Support;
using Npgsql;

namespace Chandlery.Tests.Files;

/// <summary>What can happen to a register that benches share: servers die, networks break, passwords are wrong.</summary>
[Collection(OnPostgres.Name)]
public sealed class SharedRegisterTests(PostgresServer server) : IDisposable
{
    private const int Writers = 8;
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-register-").FullName;
    private readonly PostgresTestStore store = new(server);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private RegisterEntry Add(string by, int? port = null)
    {
        using RegisterBook register = RegisterPlace.Shared(server.To(store.Database, port), null).Open();
        return register.Add(TestRegisters.Contents(1).Single(), TestRegisters.Texts, by, Noon);
    }

    // What was acknowledged stands, once; and one chain goes through all.
    private void Holds(IEnumerable<string> acknowledged)
    {
        using RegisterBook register = store.In(folder).OpenToRead();
        HashSet<string> hashes = [.. register.Find(new RegisterQuery()).Select(e => e.Hash)];
        Assert.Subset(hashes, acknowledged.ToHashSet());
        Assert.Empty(register.Verify());
    }

    private async Task<ConcurrentBag<string>> WriteWhile(Action harm)
    {
        var acknowledged = new ConcurrentBag<string>();
        using var over = new CancellationTokenSource();
        Task[] writing =
        [
            .. Enumerable
                .Range(0, Writers)
                .Select(w =>
                    Task.Run(() =>
                    {
                        while (!over.IsCancellationRequested)
                        {
                            try
                            {
                                acknowledged.Add(Add($"writer {w}").Hash);
                            }
                            catch (IOException)
                            {
                                Thread.Sleep(50);
                            }
                        }
                    })
                ),
        ];
        for (int round = 0; round < 3; round++)
        {
            int before = acknowledged.Count;
            Assert.True(SpinWait.SpinUntil(() => acknowledged.Count >= before + Writers, TimeSpan.FromSeconds(60)));
            harm();
        }

        await over.CancelAsync();
        await Task.WhenAll(writing);
        return acknowledged;
    }

    [Fact]
    public async Task A_server_killed_while_eight_write_loses_nothing_that_was_acknowledged()
    {
        Add("the first");
        Holds(
            await WriteWhile(() =>
            {
                server.Kill();
                server.Start();
            })
        );
        Add("the last");
        Holds([]);
    }

    [Fact]
    public async Task A_connection_killed_in_the_middle_loses_nothing_that_was_acknowledged()
    {
        Add("the first");
        Holds(
            await WriteWhile(() =>
            {
                using var connection = new NpgsqlConnection(server.To("postgres") + ";Pooling=false");
                connection.Open();
                using var command = new NpgsqlCommand(
                    $"SELECT pid FROM pg_stat_activity WHERE datname = '{store.Database}' AND state <> 'idle' LIMIT 1",
                    connection
                );
                if (command.ExecuteScalar() is int backend)
                {
                    Process.GetProcessById(backend).Kill();
                    server.AwaitAnswer();
                }
            })
        );
    }

    [Fact]
    public void A_network_that_breaks_before_the_last_word_leaves_nothing()
    {
        Add("the first");
        using var detour = new Detour(server.Port);
        detour.CutBefore("COMMIT\0");
        string said = Assert.Throws<IOException>(() => Add("the second", detour.Port)).Message;
        Assert.Contains("look with 'register find' before you enter it again", said, StringComparison.Ordinal);
        using (RegisterBook register = store.In(folder).OpenToRead())
        {
            Assert.Equal(1, register.Head().Number);
        }

        detour.Mend();
        Assert.Equal(2, Add("the second", detour.Port).Number);
        Holds([]);
    }

    [Fact]
    public void A_network_that_swallows_the_answer_says_that_the_entry_may_stand()
    {
        Add("the first");
        using var detour = new Detour(server.Port);
        detour.CutAfter("COMMIT\0");
        string said = Assert.Throws<IOException>(() => Add("the second", detour.Port)).Message;
        Assert.Contains("so it may stand or not: look with 'register find'", said, StringComparison.Ordinal);
        using RegisterBook register = store.In(folder).OpenToRead();
        Assert.Equal("the second", register.Find(new RegisterQuery())[1].By);
        Holds([]);
    }

    [Fact]
    public void A_network_that_breaks_while_entering_leaves_nothing_and_says_so()
    {
        Add("the first");
        using var detour = new Detour(server.Port);
        detour.CutBefore("INSERT INTO entry");
        string said = Assert.Throws<IOException>(() => Add("the second", detour.Port)).Message;
        Assert.Contains("the connection to the server broke; nothing was written", said, StringComparison.Ordinal);
        Assert.Equal(2, Add("the second").Number);
        Holds([]);
    }

    [Fact]
    public void What_cannot_be_reached_or_opened_is_said_in_words()
    {
        string Said(string connection) => Assert.Throws<IOException>(() => RegisterPlace.Named(connection).OpenToRead()).Message;
        string there = server.To(store.Database);
        Assert.Contains(
            "the server cannot be reached",
            Said(server.To(store.Database, PostgresServer.FreePort())),
            StringComparison.Ordinal
        );
        Assert.Contains("no such database; make an empty one", Said(server.To("nowhere")), StringComparison.Ordinal);
        Assert.Contains("no such user with this password; give it in the variable PGPASSWORD", Said(there + "x"), StringComparison.Ordinal);
        Assert.Contains("there is no register yet", Said(there), StringComparison.Ordinal);
        Assert.Contains("The connection string of the register cannot be read", Said("Host=there;Colour=red"), StringComparison.Ordinal);
        Assert.DoesNotContain("boats", Said(there), StringComparison.Ordinal);
        (int code, _, string errors) = Command.Run("register", "find", server.To("nowhere"));
        Assert.Equal(2, code);
        Assert.Contains("no such database", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bench_that_holds_the_register_for_too_long_is_told_of()
    {
        Add("the first");
        using var connection = new NpgsqlConnection(server.To(store.Database) + ";Pooling=false");
        connection.Open();
        using NpgsqlTransaction holding = connection.BeginTransaction();
        using var command = new NpgsqlCommand(
            string.Create(CultureInfo.InvariantCulture, $"SELECT pg_advisory_xact_lock({PostgresStore.AppendLock})"),
            connection
        );
        command.ExecuteNonQuery();
        Assert.Contains("another bench holds it", Assert.Throws<IOException>(() => Add("the second")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_entry_follows_one_that_another_follows()
    {
        Add("the first");
        Assert.Equal(
            PostgresErrorCodes.UniqueViolation,
            Assert
                .Throws<PostgresException>(() =>
                    server.Run(store.Database, "INSERT INTO entry SELECT 7, at, by, content, previous_hash, 'x', batch, subject FROM entry")
                )
                .SqlState
        );
        Assert.Throws<PostgresException>(() => server.Run(store.Database, "TRUNCATE entry"));
    }

    [Fact]
    public void The_makers_file_names_the_register_and_holds_no_password()
    {
        using var makers = new MakersFolder();
        store.In(makers.Path);
        string candle = System.IO.Path.Combine(makers.Path, "candles", "fig-tin.yaml");
        (int code, string output, string errors) = Command.Run("register", "add", candle, "--by", "M. Hale");
        Assert.True(code == 0, errors);
        Assert.StartsWith("1: FT-2611-04", output, StringComparison.Ordinal);
        Assert.False(File.Exists(System.IO.Path.Combine(makers.Path, "register.sqlite")));
        (code, output, errors) = Command.Run("register", "verify", makers.Path);
        Assert.True(code == 0, errors);
        Assert.Contains("The witness file register.shared.head names the last entry of this bench", output, StringComparison.Ordinal);
        Assert.Contains("FT-2611-04", Command.Run("register", "find", makers.Path).Output, StringComparison.Ordinal);
        makers.Change("maker.yaml", "Username=maker", "Username=maker;Password=x");
        (code, _, errors) = Command.Run("register", "find", makers.Path);
        Assert.Equal(2, code);
        Assert.Contains("holds a password", errors, StringComparison.Ordinal);
    }
}
