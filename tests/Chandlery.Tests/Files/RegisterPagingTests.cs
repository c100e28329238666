using Chandlery.Register;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Files;

/// <summary>A register of many entries is asked by its indexes and read by pages, and keeps nobody waiting meanwhile.</summary>
public abstract class RegisterPagingTests(TestStore store) : IDisposable
{
    private const int Count = TestRegisters.FilledCount;
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-register-").FullName;

    public void Dispose()
    {
        Directory.Delete(folder, recursive: true);
        GC.SuppressFinalize(this);
    }

    public static TheoryData<RegisterQuery> Queries =>
        [
            new(),
            new(Batch: "B-7"),
            new(Batch: "candle-1"),
            new(Substance: "97-54-1"),
            new(Substance: "SUBSTANCE 1"),
            new(Substance: "substance"),
            new(Oil: "oil-2"),
            new(Oil: "Night 2"),
            new(Document: "doc"),
            new(Revised: "2026-02-03"),
            new(Substance: "substance 2", Oil: "oil-1", Revised: "2026-02-02"),
            new(Batch: "candle-2", Substance: "Substance 11", Document: "DOC-3"),
            new(Substance: "nowhere"),
            new(Substance: "substance", Revised: "2026-02-03"),
            new(Substance: "substance", Oil: "night", Document: "doc"),
        ];

    [Theory]
    [MemberData(nameof(Queries))]
    public void What_is_found_is_what_going_through_all_entries_finds(RegisterQuery query)
    {
        store.Fill(folder);
        ArgumentNullException.ThrowIfNull(query);
        using RegisterBook register = store.In(folder).OpenToRead();
        List<long> expected =
        [
            .. TestRegisters
                .Contents(Count)
                .Select((c, i) => (Content: c, Number: i + 1L))
                .Where(c => Matches(c.Content, query))
                .Select(c => c.Number),
        ];
        IEnumerable<long> Found(RegisterStretch stretch) => register.Stream(query, _ => { }, stretch).Select(e => e.Number);
        Assert.Equal(expected, Found(RegisterStretch.All));
        Assert.Equal(expected.AsEnumerable().Reverse(), Found(RegisterStretch.Latest));
        Assert.Equal(expected.Where(n => n >= 100), Found(new RegisterStretch(100, false)));
        Assert.Equal(expected.Where(n => n <= 100).Reverse(), Found(new RegisterStretch(100, true)));
    }

    // Written apart from the program's search: it goes through everything.
    private static bool Matches(RegisterContent c, RegisterQuery q)
    {
        bool Has(string text, string part) => text.Contains(part, StringComparison.OrdinalIgnoreCase);
        return (q.Batch is null || c.Batch == q.Batch || c.Subject == q.Batch)
            && (q.Substance is null || c.Substances.Any(s => s.Cas == q.Substance || Has(s.Name, q.Substance)))
            && (q.Oil is null || c.Oils.Any(o => o.Oil == q.Oil || Has(o.Name, q.Oil)))
            && (q.Document is null || c.Oils.Any(o => Has(o.Document, q.Document)))
            && (q.Revised is null || c.Oils.Any(o => o.Revised == q.Revised));
    }

    [Fact]
    public void Whoever_reads_or_verifies_keeps_no_writer_waiting()
    {
        store.Fill(folder);
        using RegisterBook reading = store.In(folder).OpenToRead();
        using RegisterBook writing = store.In(folder).Open();
        using IEnumerator<RegisterEntry> entries = reading.Stream(new RegisterQuery(), _ => { }, RegisterStretch.All).GetEnumerator();
        Assert.True(entries.MoveNext());
        TestRegisters.Fill(writing, 1);
        store.Tamper(folder, "UPDATE held_substance SET cas = '1-1-1' WHERE number = 1");
        bool added = false;
        reading.Verify(_ =>
        {
            if (!added)
            {
                added = true;
                TestRegisters.Fill(writing, 1);
            }
        });
        Assert.True(added);
        int rest = 1;
        while (entries.MoveNext())
        {
            rest++;
        }

        Assert.InRange(rest, Count, Count + 2);
    }

    [Fact]
    public void The_command_line_shows_an_answer_by_pages()
    {
        store.Fill(folder);
        (int code, string output, string said) = Command.Run("register", "find", store.Named(folder));
        Assert.Equal(0, code);
        Assert.EndsWith("200 entries.\n", output, StringComparison.Ordinal);
        Assert.Equal("There are more: --after 200 shows the next ones.\n", said);
        (_, output, said) = Command.Run("register", "find", store.Named(folder), "--after", "200");
        Assert.EndsWith("100 entries.\n", output, StringComparison.Ordinal);
        Assert.Empty(said);
        (_, output, said) = Command.Run(
            "register",
            "find",
            store.Named(folder),
            "--substance",
            "Substance",
            "--most",
            "3",
            "--after",
            "10",
            "--format",
            "csv"
        );
        Assert.Equal(
            ["number", "11", "12", "13"],
            output.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split(',')[0])
        );
        Assert.Contains("--after 13", said, StringComparison.Ordinal);
        string file = System.IO.Path.Combine(folder, "all.csv");
        Assert.Equal(0, Command.Run("register", "find", store.Named(folder), "--format", "csv", "--out", file).Code);
        Assert.Equal(Count + 1, File.ReadAllLines(file).Length);
        Assert.Equal(2, Command.Run("register", "find", store.Named(folder), "--most", "0").Code);
    }

    [Theory]
    [InlineData("UPDATE held_substance SET cas = '1-1-1' WHERE number = 290", "entry 290: held_substance does not say what is signed")]
    [InlineData("DROP TRIGGER entry_is_kept; DELETE FROM entry WHERE number = 300", "entries 300 to 300 were cut off the end")]
    [InlineData("DROP TRIGGER entry_stays; UPDATE entry SET by = 'x' WHERE number = 250", "entry 250 was changed")]
    [InlineData("UPDATE held_substance SET cas = '1-1-1' WHERE number = 100", null)]
    public void The_latest_entries_can_be_checked_alone(string sql, string? says)
    {
        store.Fill(folder);
        store.Tamper(folder, sql);
        using RegisterBook register = store.In(folder).OpenToRead();
        var wrong = new List<string>();
        register.VerifyLatest(100, wrong.Add);
        Assert.Equal(says is null, wrong.Count == 0);
        Assert.True(says is null || wrong.Exists(w => w.StartsWith(says, StringComparison.Ordinal)), string.Join('\n', wrong));
    }
}
