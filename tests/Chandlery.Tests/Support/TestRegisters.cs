using System.Globalization;
using Chandlery.Register;
using Microsoft.Data.Sqlite;

namespace Chandlery.Tests.Support;

/// <summary>Looks into a register, and changes it as nobody should.</summary>
public static class TestRegisters
{
    /// <summary>How many entries a filled store has.</summary>
    public const int FilledCount = 300;

    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);

    public static IReadOnlyList<string> Verify(string path)
    {
        using RegisterBook register = RegisterFile.OpenToRead(path);
        return register.Verify();
    }

    public static void Tamper(string path, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    /// <summary>Small entries that differ in everything that is searched.</summary>
    public static IEnumerable<RegisterContent> Contents(int count) => Enumerable.Range(1, count).Select(Content);

    /// <summary>Adds small entries.</summary>
    public static void Fill(RegisterBook register, int count)
    {
        ArgumentNullException.ThrowIfNull(register);
        foreach (RegisterContent content in Contents(count))
        {
            register.Add(content, Texts, "M. Hale", Noon);
        }
    }

    /// <summary>The declarations of small entries.</summary>
    public static IReadOnlyDictionary<string, string> Texts { get; } =
        new Dictionary<string, string> { [RegisterFile.Sha256("declares: candle\n")] = "declares: candle\n" };

    private static RegisterContent Content(int i)
    {
        string Day(int number) => string.Create(CultureInfo.InvariantCulture, $"2026-02-{(number % 28) + 1:00}");
        return new RegisterContent
        {
            Batch = $"B-{i}",
            Subject = $"candle-{i % 5}",
            Candle = $"Candle {i % 5}",
            Edition = "eu-clp",
            AsOf = "2026-11-25",
            LawLookedUp = "2026-11-01",
            Result = "{}",
            Declarations = [new UsedDeclaration("candles/candle.yaml", RegisterFile.Sha256("declares: candle\n"))],
            Oils =
            [
                new UsedOil($"oil-{i % 7}", $"Night {i % 7}", $"DOC-{i % 11}", Day(i % 7)),
                new UsedOil($"oil-{(i + 3) % 7}", $"Night {(i + 3) % 7}", $"DOC-{(i + 3) % 11}", Day((i + 3) % 7)),
            ],
            Substances =
            [
                new HeldSubstance($"Substance {i % 13}", i % 3 == 0 ? "97-54-1" : "", 1),
                new HeldSubstance($"Substance {i % 97}", "", 2),
            ],
            Documents = [new IssuedDocument("label.pdf", RegisterFile.Sha256("label"))],
        };
    }
}
