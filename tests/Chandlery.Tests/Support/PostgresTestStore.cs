using System.Text.RegularExpressions;
using Chandlery.Register;

namespace Chandlery.Tests.Support;

/// <summary>A register in a database of its own.</summary>
public sealed partial class PostgresTestStore(PostgresServer server) : TestStore
{
    private readonly Lock making = new();
    private string? database;

    /// <summary>Its database, made when it is first asked for.</summary>
    public string Database
    {
        get
        {
            lock (making)
            {
                return database ??= server.NewDatabase();
            }
        }
    }

    public override RegisterPlace In(string folder)
    {
        string maker = Path.Combine(folder, "maker.yaml");
        if (!File.Exists(maker))
        {
            return RegisterPlace.Shared(server.To(Database), Witness(folder));
        }

        string setting =
            $"sharedRegister: \"Host=127.0.0.1;Port={server.Port};Database={Database};Username=maker;Passfile={server.PasswordFile}\"\n";
        string text = File.ReadAllText(maker);
        if (!text.Contains(setting, StringComparison.Ordinal))
        {
            File.WriteAllText(maker, text + setting);
        }

        return RegisterPlace.OfFolder(folder);
    }

    public override string Named(string folder) => server.To(Database);

    public override string Witness(string folder) => Path.Combine(folder, "register.shared.head");

    public override void Fill(string folder)
    {
        database = server.NewDatabase(server.Filled.Value.Database);
        File.WriteAllText(Witness(folder), server.Filled.Value.Witness);
    }

    // A trigger is dropped from its table there.
    public override void Tamper(string folder, string sql) => server.Run(Database, Trigger().Replace(sql, "DROP TRIGGER $1_$2 ON $1;"));

    [GeneratedRegex("DROP TRIGGER ([a-z]+)_([a-z_]+);")]
    private static partial Regex Trigger();
}
