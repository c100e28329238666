using System.Data.Common;
using System.Globalization;
using Chandlery.Register;
using Chandlery.Tests.Support;
using Microsoft.Data.Sqlite;

namespace Chandlery.Tests.Files;

/// <summary>What is so of a register in a file alone.</summary>
public sealed class RegisterFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-register-").FullName;

    private string Path => System.IO.Path.Combine(folder, "register.sqlite");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private void Fill(int count)
    {
        using RegisterBook register = RegisterFile.Open(Path);
        TestRegisters.Fill(register, count);
    }

    private IReadOnlyList<string> Verify() => TestRegisters.Verify(Path);

    [Fact]
    public void What_cannot_be_opened_is_said_in_words()
    {
        Assert.Contains(
            "no register yet",
            Assert.Throws<IOException>(() => RegisterFile.OpenToRead(Path)).Message,
            StringComparison.Ordinal
        );
        File.WriteAllText(Path, "this is no database, but long enough to be taken for one: " + new string('x', 4096));
        Assert.Contains("no register", Assert.Throws<IOException>(() => RegisterFile.OpenToRead(Path)).Message, StringComparison.Ordinal);
        Assert.Contains(
            "no such folder",
            Assert.Throws<IOException>(() => RegisterFile.Open(System.IO.Path.Combine(folder, "none", "r.sqlite"))).Message,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_full_disk_loses_nothing()
    {
        Fill(1);
        using (RegisterBook register = RegisterFile.Open(Path))
        {
            register.LimitToPresentSize();
            Assert.Contains(
                "disk is full",
                Assert.Throws<IOException>(() => TestRegisters.Fill(register, 40)).Message,
                StringComparison.Ordinal
            );
        }

        Assert.Empty(Verify());
        Fill(1);
        Assert.Empty(Verify());
    }

    [Fact]
    public void A_half_entry_of_a_killed_program_is_undone_on_reading()
    {
        Fill(1);
        string copy = System.IO.Path.Combine(folder, "copy.sqlite");
        using (var connection = new SqliteConnection($"Data Source={Path};Pooling=False"))
        {
            connection.Open();
            using SqliteCommand command = connection.CreateCommand();

            // So little room that SQLite writes pages of the open transaction into the file, as a killed program leaves them.
            command.CommandText =
                "PRAGMA cache_size = 1; BEGIN IMMEDIATE; WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 2000) INSERT INTO used_oil SELECT 7, hex(randomblob(200)), 'x', 'y', 'z' FROM n;";
            command.ExecuteNonQuery();
            File.Copy(Path, copy);
            File.Copy(Path + "-journal", copy + "-journal");
            File.Copy(Path + ".head", copy + ".head");
        }

        using RegisterBook register = RegisterFile.OpenToRead(copy);
        Assert.Single(register.Find(new RegisterQuery()));
        Assert.Empty(register.Verify());
        Assert.False(File.Exists(copy + "-journal"));
    }

    [Fact]
    public void A_register_of_an_older_program_is_taken_over()
    {
        Fill(1);
        TestRegisters.Tamper(Path, "DROP TABLE issued_ufi");
        Assert.Empty(Verify());
        Fill(1);
        Assert.Empty(Verify());
        using RegisterBook register = RegisterFile.OpenToRead(Path);
        Assert.Equal([1, 2], register.Find(new RegisterQuery()).Select(e => e.Number));
    }

    [Fact]
    public void A_register_without_its_witness_says_so_and_gets_a_new_one()
    {
        Fill(1);
        File.Delete(Path + ".head");
        Assert.Contains("the witness file is missing", Assert.Single(Verify()), StringComparison.Ordinal);
        Fill(1);
        Assert.Empty(Verify());
    }

    [Theory]
    [InlineData("entry", "batch")]
    [InlineData("entry", "subject")]
    [InlineData("entry", null)]
    [InlineData("held_substance", "cas")]
    [InlineData("held_substance", "name")]
    [InlineData("used_oil", "oil")]
    [InlineData("used_oil", "name")]
    [InlineData("used_oil", "document")]
    [InlineData("used_oil", "revised")]
    public void No_search_reads_a_whole_table_or_sorts_it(string table, string? column)
    {
        Fill(1);
        using RegisterBook register = RegisterFile.OpenToRead(Path);
        foreach (bool latestFirst in new[] { false, true })
        {
            string sql = new Posting(table, column, "x").Sql(latestFirst, 16);
            List<string> plan = register.Store.Rows(
                row => RegisterStore.Text(row, 3),
                $"EXPLAIN QUERY PLAN {sql}",
                column is null ? [1L] : [1L, "x"]
            );
            Assert.All(plan, step => Assert.StartsWith("SEARCH", step, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_UFI_issued_again_and_again_is_looked_up_alike()
    {
        Fill(1);
        using RegisterBook register = RegisterFile.OpenToRead(Path);
        using DbCommand plan = register.Store.Command(
            "EXPLAIN QUERY PLAN SELECT number FROM issued_ufi WHERE ufi = @p0 AND composition < @p1",
            "x",
            "y"
        );
        using DbDataReader row = plan.ExecuteReader();
        Assert.True(row.Read());
        Assert.Contains("ufi=? AND composition<?", Convert.ToString(row[3], CultureInfo.InvariantCulture), StringComparison.Ordinal);
    }
}
