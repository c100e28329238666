using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Chandlery.Register;
using Npgsql;

namespace Chandlery.Tests.Support;

/// <summary>
/// A PostgreSQL server of the tests' own, in a temporary folder, on a free port, for as long as they run. The server refuses to be
/// root's, so root hands it to the user nobody.
/// </summary>
public sealed class PostgresServer : IDisposable
{
    private const string Password = "three small boats";
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-postgres-").FullName;
    private int databases;

    // Made once: each test gets a copy.
    internal Lazy<(string Database, string Witness)> Filled { get; }

    public PostgresServer()
    {
        Port = FreePort();
        File.WriteAllText(Path.Combine(folder, "password"), Password);
        PasswordFile = Path.Combine(folder, "pgpass");
        File.WriteAllText(PasswordFile, $"127.0.0.1:*:*:maker:{Password}\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(PasswordFile, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }

        string cluster = Path.Combine(folder, "cluster");
        Directory.CreateDirectory(cluster);
        if (Environment.UserName == "root")
        {
            Run("chown", "nobody", cluster);
            Run("chmod", "755", folder);
        }

        RunAsUser(
            "initdb",
            "-D",
            cluster,
            "-U",
            "maker",
            "-A",
            "scram-sha-256",
            "-E",
            "UTF8",
            "--locale=C",
            "--no-sync",
            $"--pwfile={Path.Combine(folder, "password")}"
        );
        Start();
        Filled = new Lazy<(string, string)>(() =>
        {
            string database = NewDatabase();
            string witness = Path.Combine(folder, "filled.head");
            using (RegisterBook register = RegisterPlace.Shared(To(database), witness).Open())
            {
                TestRegisters.Fill(register, TestRegisters.FilledCount);
            }

            return (database, File.ReadAllText(witness));
        });
    }

    /// <summary>Where it listens.</summary>
    public int Port { get; }

    /// <summary>A file with the password, as the client's library reads it.</summary>
    public string PasswordFile { get; }

    /// <summary>A connection string with the password.</summary>
    public string To(string database, int? port = null) =>
        $"Host=127.0.0.1;Port={port ?? Port};Database={database};Username=maker;Password={Password}";

    /// <summary>A new, empty database, or a copy of another.</summary>
    public string NewDatabase(string? of = null)
    {
        string name = $"register_{Interlocked.Increment(ref databases)}";
        Run("postgres", $"CREATE DATABASE {name}{(of is null ? "" : $" TEMPLATE {of}")}");
        return name;
    }

    /// <summary>Runs a command in a database.</summary>
    public void Run(string database, string sql)
    {
        using var connection = new NpgsqlConnection(To(database) + ";Pooling=false");
        connection.Open();
        using var command = new NpgsqlCommand(sql, connection);
        command.ExecuteNonQuery();
    }

    /// <summary>
    /// Starts it, and waits until it answers. What it wrote need not reach the disk: it is the server that is killed here, not the machine.
    /// </summary>
    public void Start() =>
        RunAsUser(
            "pg_ctl",
            "-D",
            Path.Combine(folder, "cluster"),
            "-l",
            Path.Combine(folder, "cluster", "log"),
            "-o",
            $"-p {Port} -c listen_addresses=127.0.0.1 -c unix_socket_directories='' -c fsync=off",
            "-t",
            "300",
            "-w",
            "start"
        );

    /// <summary>Kills it where it stands: nothing is finished, nothing is written back.</summary>
    public void Kill() => RunAsUser("pg_ctl", "-D", Path.Combine(folder, "cluster"), "-m", "immediate", "-w", "stop");

    /// <summary>Waits until it answers: when one of its processes is killed it starts all of them anew.</summary>
    public void AwaitAnswer() =>
        Assert.True(
            SpinWait.SpinUntil(
                () =>
                {
                    Thread.Sleep(100);
                    try
                    {
                        Run("postgres", "SELECT 1");
                        return true;
                    }
                    catch (NpgsqlException)
                    {
                        return false;
                    }
                },
                TimeSpan.FromSeconds(60)
            )
        );

    public void Dispose()
    {
        Kill();
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>A port on which nobody listens.</summary>
    public static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static string Program(string name)
    {
        IEnumerable<string> folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator);
        if (Directory.Exists("/usr/lib/postgresql"))
        {
            folders = folders.Concat(
                Directory.GetDirectories("/usr/lib/postgresql").OrderDescending(StringComparer.Ordinal).Select(f => Path.Combine(f, "bin"))
            );
        }

        return folders.Select(f => Path.Combine(f, name)).FirstOrDefault(File.Exists)
            ?? throw new InvalidOperationException(
                $"PostgreSQL's '{name}' is not installed: install the Debian package 'postgresql', as tests/run.sh does. The register must be tested on both stores."
            );
    }

    private void RunAsUser(string program, params string[] arguments)
    {
        string[] command = [Program(program), .. arguments];
        if (Environment.UserName == "root")
        {
            command = ["setpriv", "--reuid=nobody", "--regid=nogroup", "--clear-groups", "--", .. command];
        }

        Run(command);
    }

    private void Run(params string[] command)
    {
        using Process process = Process.Start(new ProcessStartInfo(command[0], command.Skip(1)) { WorkingDirectory = folder })!;
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"'{string.Join(' ', command)}' ended with {process.ExitCode}");
        }
    }
}
