using Chandlery.Core.Assessed;
using Chandlery.Register;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Files;

/// <summary>What is searched in the register is what is signed, and nothing can be cut off without a trace.</summary>
public abstract class RegisterTruthTests(TestStore store) : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private readonly MakersFolder folder = new();

    public void Dispose()
    {
        folder.Dispose();
        GC.SuppressFinalize(this);
    }

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
        using RegisterBook register = store.In(folder.Path).Open();
        foreach (string id in ids)
        {
            (RegisterContent content, IReadOnlyDictionary<string, string> texts) = Content(id);
            register.Add(content, texts, "M. Hale", Noon);
        }

        return this;
    }

    private IReadOnlyList<string> Verify() => store.Verify(folder.Path);

    private void Tamper(string sql) => store.Tamper(folder.Path, sql);

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
        using RegisterBook register = store.In(folder.Path).OpenToRead();
        var damaged = new List<long>();
        Assert.Equal([1, 3], register.Stream(new RegisterQuery(), damaged.Add, RegisterStretch.All).Select(e => e.Number));
        Assert.Equal([2], damaged);
        (int code, string output, string errors) = Command.Run("register", "find", folder.Path);
        Assert.Equal(1, code);
        Assert.Contains("2 entries.", output, StringComparison.Ordinal);
        Assert.Contains("Entry 2 is damaged", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("DELETE FROM held_substance", "held_substance")]
    [InlineData("DELETE FROM used_oil WHERE number > 1", "used_oil")]
    [InlineData("UPDATE held_substance SET cas = '1-1-1', name = 'x' WHERE number = 2", "held_substance")]
    [InlineData("DROP TABLE used_oil", "used_oil")]
    [InlineData("DROP TRIGGER entry_stays; UPDATE entry SET batch = 'other', subject = 'other' WHERE number = 2", "entry")]
    public void An_emptied_or_mangled_table_hides_no_entry(string sql, string table)
    {
        With("hb-2611", "fig-tin", "slate-jar");
        long[] Found(RegisterQuery query)
        {
            using RegisterBook register = store.In(folder.Path).OpenToRead();
            return [.. register.Stream(query, _ => { }, RegisterStretch.All).Select(e => e.Number)];
        }

        RegisterQuery[] queries = [new(Substance: "97-54-1"), new(Oil: "fig-leaf"), new(Batch: "fig-tin"), new(Substance: "linalool")];
        long[][] before = [.. queries.Select(Found)];
        Assert.All(before, b => Assert.NotEmpty(b));
        Tamper(sql);
        Assert.Equal(before, queries.Select(Found));
        (int code, _, string errors) = Command.Run("register", "find", folder.Path, "--substance", "97-54-1");
        Assert.Equal(1, code);
        Assert.Contains(table + ", which is searched", errors, StringComparison.Ordinal);
        using (RegisterBook register = store.In(folder.Path).Open())
        {
            Assert.Contains(register.Doubts(Content("fig-tin").Content), d => d.Contains("may go unseen", StringComparison.Ordinal));
        }

        (code, string output, errors) = Command.Run("register", "rebuild", folder.Path);
        Assert.True(code == 0, errors);
        Assert.Contains("for 3 entries", output, StringComparison.Ordinal);
        Assert.Empty(Verify());
        Assert.Equal(0, Command.Run("register", "find", folder.Path, "--substance", "97-54-1").Code);
        Assert.Equal(before, queries.Select(Found));
        Assert.ThrowsAny<Exception>(() => Tamper("UPDATE entry SET batch = 'again' WHERE number = 1"));
    }

    [Fact]
    public void What_is_found_is_what_is_signed()
    {
        store.Fill(folder.Path);
        Tamper("UPDATE used_oil SET oil = 'rose', name = 'Rose' WHERE number = 7");
        using RegisterBook register = store.In(folder.Path).OpenToRead();
        Assert.Null(register.SearchDoubt);
        Assert.Empty(register.Find(new RegisterQuery(Oil: "rose")));
        Assert.Equal("entry 7 is searched by what is not signed in it", register.SearchDoubt);
    }

    [Fact]
    public void A_register_that_was_emptied_is_not_an_empty_one()
    {
        With("fig-tin", "slate-jar");
        Tamper("DROP TRIGGER entry_is_kept; DELETE FROM entry");
        (int code, _, string errors) = Command.Run("register", "find", folder.Path);
        Assert.Equal(1, code);
        Assert.Contains("the register ends at entry 0, and the witness beside it names entry 2", errors, StringComparison.Ordinal);
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

        // A new entry would overwrite the witness, and nobody would ever know.
        string witness = File.ReadAllText(store.Witness(folder.Path));
        Assert.Contains("names entry 3", Assert.Throws<IOException>(() => With("fig-tin")).Message, StringComparison.Ordinal);
        Assert.Equal(witness, File.ReadAllText(store.Witness(folder.Path)));
    }

    [Fact]
    public void A_program_killed_between_an_entry_and_its_witness_leaves_a_register_that_holds_together()
    {
        (RegisterContent content, IReadOnlyDictionary<string, string> texts) = Content("fig-tin");
        for (int hour = 1; hour <= 2; hour++)
        {
            using (RegisterBook register = store.In(folder.Path).Open())
            {
                register.Enter(content, texts, "M. Hale", Noon.AddHours(hour), new Dictionary<string, byte[]>());
            }

            Assert.Empty(Verify());
        }

        using (RegisterBook register = store.In(folder.Path).Open())
        {
            register.Add(content, texts, "M. Hale", Noon.AddHours(3));
        }

        Assert.StartsWith("3 ", File.ReadAllText(store.Witness(folder.Path)), StringComparison.Ordinal);
        Assert.Empty(Verify());
    }

    [Fact]
    public void A_forged_tail_is_not_the_one_that_was_witnessed()
    {
        With("fig-tin");
        string witness = File.ReadAllText(store.Witness(folder.Path));
        File.WriteAllText(store.Witness(folder.Path), "1 " + new string('a', 64));
        Assert.Equal(["entry 1 is not the one that the witness beside the register names"], Verify());
        File.WriteAllText(store.Witness(folder.Path), witness);
        Assert.Empty(Verify());
    }

    [Fact]
    public void Time_does_not_run_backwards()
    {
        With("fig-tin", "slate-jar");
        (RegisterContent content, IReadOnlyDictionary<string, string> texts) = Content("fig-tin");
        using (RegisterBook register = store.In(folder.Path).Open())
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
    public void The_same_batch_again_and_one_UFI_on_two_compositions_are_told()
    {
        With("harbour-bowl");
        using RegisterBook register = store.In(folder.Path).Open();
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
    public void Names_cannot_steer_the_terminal()
    {
        folder.Change("candles/fig-tin.yaml", "name: Fig Tin", "name: \"Fig\\u202ETin\\u001B[2J\"");
        With("fig-tin");
        (_, string output, _) = Command.Run("register", "find", folder.Path);
        Assert.Contains("Fig\uFFFDTin\uFFFD[2J", output, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001B', output);
        Tamper("DROP TRIGGER entry_stays; UPDATE entry SET batch = '\u001B[2J\u202E' WHERE number = 1");
        (int code, _, string errors) = Command.Run("register", "verify", folder.Path);
        Assert.Equal(1, code);
        Assert.Contains("searched as '\uFFFD[2J\uFFFD'", errors, StringComparison.Ordinal);
        folder.Change("candles/fig-tin.yaml", "batchCode: FT-2611-04", "batchCode: \"FT\\u202E4\"");
        (code, output, errors) = Command.Run(
            "register",
            "add",
            System.IO.Path.Combine(folder.Path, "candles", "fig-tin.yaml"),
            "--by",
            "M. Hale"
        );
        Assert.True(code == 0, errors);
        Assert.Contains("2: FT\uFFFD4, Fig\uFFFDTin\uFFFD[2J", output, StringComparison.Ordinal);
    }
}
