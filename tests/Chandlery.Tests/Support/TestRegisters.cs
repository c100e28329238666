using Chandlery.Register;
using Microsoft.Data.Sqlite;

namespace Chandlery.Tests.Support;

/// <summary>Looks into a register, and changes it as nobody should.</summary>
public static class TestRegisters
{
    public static IReadOnlyList<string> Verify(string path)
    {
        using RegisterFile register = RegisterFile.OpenToRead(path);
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
}
