using Chandlery.Core.Assessed;
using Chandlery.Register;
using Chandlery.Tests.Support;
using Chandlery.Yaml;
using Microsoft.Data.Sqlite;

namespace Chandlery.Tests.Files;

/// <summary>What is searched in the register is what is signed, and nothing can be cut off without a trace.</summary>
public sealed class RegisterTruthTests : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private readonly MakersFolder folder = new();

    private string Path => System.IO.Path.Combine(folder.Path, "register.sqlite");

    public void Dispose() => folder.Dispose();

    private (RegisterContent Content, IReadOnlyDictionary<string, string> Texts) Content(string id)
    {
        Assessment a = folder.Assess(id, "IE");
        var problems = new Problems();
        var content = RegisterWriter.Content(a, folder.Path, folder.Catalogue, [("label.pdf", [1, 2, 3])], problems);
        Assert.Empty(problems.Found);
        return content;
    }

    private RegisterTruthTests With(params string[] ids)
    {
        using RegisterBook register = RegisterFile.Open(Path);
        foreach (string id in ids)
        {
            (RegisterContent content, IReadOnlyDictionary<string, string> texts) = Content(id);
            register.Add(content, texts, "M. Hale", Noon);
        }

        return this;
    }

    private IReadOnlyList<string> Verify() => TestRegisters.Verify(Path);

    private void Tamper(string sql) => TestRegisters.Tamper(Path, sql);

    [Theory]
    [InlineData("DELETE FROM used_oil WHERE number = 2", "entry 2: used_oil does not say what is signed")]
    [InlineData("DELETE FROM held_substance WHERE number = 1", "entry 1: held_substance does not say what is signed")]
    [InlineData("UPDATE held_substance SET cas = '1-1-1' WHERE number = 3", "entry 3: held_substance does not say what is signed")]
    [InlineData("UPDATE issued_ufi SET ufi = 'X' WHERE number = 1", "entry 1: issued_ufi does not say what is signed")]
    [InlineData("INSERT INTO used_oil VALUES (9, 'a', 'b', 'c', 'd')", "used_oil has rows of an entry 9 that there is not")]
    [InlineData(
        "DROP TRIGGER entry_stays; UPDATE entry SET batch = 'other' WHERE number = 2",
        "entry 2: batch or subject is searched as 'other'"
    )]
    [InlineData("DROP TRIGGER entry_stays; UPDATE entry SET content = 'x' WHERE number = 2", "entry 2 is damaged and cannot be read")]
    public void What_is_searched_is_what_is_signed(string sql, string says)
    {
        With("hb-2611", "fig-tin", "slate-jar");
        Assert.Empty(Verify());
        Tamper(sql);
        Assert.Contains(Verify(), w => w.StartsWith(says, StringComparison.Ordinal));
    }

    [Fact]
    public void A_damaged_entry_hides_no_other()
    {
        With("hb-2611", "fig-tin", "slate-jar");
        Tamper("DROP TRIGGER entry_stays; UPDATE entry SET content = '{' WHERE number = 2");
        using RegisterBook register = RegisterFile.OpenToRead(Path);
        var damaged = new List<long>();
        Assert.Equal([1, 3], register.Stream(new RegisterQuery(), damaged.Add, RegisterStretch.All).Select(e => e.Number));
        Assert.Equal([2], damaged);
        (int code, string output, string errors) = Command.Run("register", "find", folder.Path);
        Assert.Equal(1, code);
        Assert.Contains("2 entries.", output, StringComparison.Ordinal);
        Assert.Contains("Entry 2 is damaged", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cut_tail_and_an_emptied_register_show()
    {
        With("hb-2611", "fig-tin", "slate-jar");
        Tamper(
            "DROP TRIGGER entry_is_kept; DELETE FROM entry WHERE number = 3; DELETE FROM used_oil WHERE number = 3; DELETE FROM held_substance WHERE number = 3; DELETE FROM issued_ufi WHERE number = 3"
        );
        Assert.Equal(["entries 3 to 3 were cut off the end: the witness beside the register names entry 3"], Verify());
        Tamper("DELETE FROM entry; DELETE FROM used_oil; DELETE FROM held_substance; DELETE FROM issued_ufi");
        Assert.Equal(["entries 1 to 3 were cut off the end: the witness beside the register names entry 3"], Verify());
        Assert.Equal(1, Command.Run("register", "verify", folder.Path).Code);
    }

    [Fact]
    public void A_register_without_its_witness_says_so_and_gets_a_new_one()
    {
        With("fig-tin");
        File.Delete(Path + ".head");
        Assert.Contains("the witness file is missing", Assert.Single(Verify()), StringComparison.Ordinal);
        With("slate-jar");
        Assert.Empty(Verify());
    }

    [Fact]
    public void A_forged_tail_is_not_the_one_that_was_witnessed()
    {
        With("fig-tin");
        string witness = File.ReadAllText(Path + ".head");
        File.WriteAllText(Path + ".head", "1 " + new string('a', 64));
        Assert.Equal(["entry 1 is not the one that the witness beside the register names"], Verify());
        File.WriteAllText(Path + ".head", witness);
        Assert.Empty(Verify());
    }

    [Fact]
    public void Time_does_not_run_backwards()
    {
        With("fig-tin", "slate-jar");
        (RegisterContent content, IReadOnlyDictionary<string, string> texts) = Content("fig-tin");
        using (RegisterBook register = RegisterFile.Open(Path))
        {
            Assert.Contains(
                "set the clock right; nothing was written",
                Assert.Throws<IOException>(() => register.Add(content, texts, "M. Hale", Noon.AddSeconds(-1))).Message,
                StringComparison.Ordinal
            );
        }

        Assert.Empty(Verify());
        Tamper("DROP TRIGGER entry_stays; UPDATE entry SET at = '2026-11-25T11:00:00Z' WHERE number = 2");
        Assert.Contains(Verify(), w => w.StartsWith("entry 2 was made at 2026-11-25T11:00:00Z, before", StringComparison.Ordinal));
    }

    [Fact]
    public void A_half_entry_of_a_killed_program_is_undone_on_reading()
    {
        With("fig-tin");
        string copy = System.IO.Path.Combine(folder.Path, "copy.sqlite");
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
    public void The_same_batch_again_and_one_UFI_on_two_compositions_are_told()
    {
        With("harbour-bowl");
        using RegisterBook register = RegisterFile.Open(Path);
        Assert.Equal(
            ["batch harbour-bowl stands in entry 1 already, under the same law"],
            register.Doubts(Content("harbour-bowl").Content)
        );
        Assert.Empty(register.Doubts(Content("fig-tin").Content));
        folder.Change("candles/harbour-bowl.yaml", "load: { percent: 8, of: wax }", "load: { percent: 7.5, of: wax }");
        folder.Change("candles/harbour-bowl.yaml", "soldIn: [IE, DE, AT]", "soldIn: [IE]\nbatchCode: HB-2");
        Assert.Contains(
            register.Doubts(Content("harbour-bowl").Content),
            d => d.Contains("stands in entry 1 with another composition", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_register_of_an_older_program_is_taken_over()
    {
        With("harbour-bowl");
        Tamper("DROP TABLE issued_ufi");
        Assert.Empty(Verify());
        With("slate-jar");
        Assert.Empty(Verify());
        using RegisterBook register = RegisterFile.OpenToRead(Path);
        Assert.Equal([1, 2], register.Find(new RegisterQuery()).Select(e => e.Number));
    }

    [Fact]
    public void Names_cannot_steer_the_terminal()
    {
        folder.Change("candles/fig-tin.yaml", "name: Fig Tin", "name: \"Fig\\u202ETin\\u001B[2J\"");
        With("fig-tin");
        (_, string output, _) = Command.Run("register", "find", folder.Path);
        Assert.Contains("Fig\uFFFDTin\uFFFD[2J", output, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001B', output);
    }
}
