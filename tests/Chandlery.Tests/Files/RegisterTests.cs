using System.Data.Common;
using System.Diagnostics;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Files;
using Chandlery.Register;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Files;

/// <summary>What a register does, in whichever store it stands.</summary>
public abstract class RegisterTests(TestStore store) : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-register-").FullName;

    public void Dispose()
    {
        Directory.Delete(folder, recursive: true);
        GC.SuppressFinalize(this);
    }

    private static (RegisterContent Content, IReadOnlyDictionary<string, string> Texts) Content(string file)
    {
        Assessment a = TestLaw.Demo(file);
        var problems = new Problems();
        var content = RegisterWriter.Content(
            a,
            TestLaw.DemoFolder,
            DeclarationFolder.Open(TestLaw.DemoFolder, TestLaw.Lawbook.Vocabulary).Catalogue,
            [("label.pdf", [1, 2, 3])],
            problems
        );
        Assert.Empty(problems.Found);
        return content;
    }

    private void Add(params string[] files) => AddAt(Noon, files);

    private void AddAt(DateTimeOffset at, params string[] files)
    {
        using RegisterBook register = store.In(folder).Open();
        foreach (string file in files)
        {
            (RegisterContent content, IReadOnlyDictionary<string, string> texts) = Content(file);
            register.Add(content, texts, "M. Hale", at);
        }
    }

    [Fact]
    public void An_entry_keeps_declarations_law_oils_and_documents()
    {
        Add("batches/hb-2611.yaml");
        using RegisterBook register = store.In(folder).OpenToRead();
        RegisterEntry entry = Assert.Single(register.Find(new RegisterQuery()));
        Assert.Equal(("HB-2611-02", "M. Hale", "2026-11-25T12:00:00Z"), (entry.Content.Batch, entry.By, entry.At));
        Assert.Contains(entry.Content.Declarations, d => d.Path == "oils/cedar-smoke.yaml");
        Assert.Contains(entry.Content.Declarations, d => d.Path == "maker.yaml");
        string hash = entry.Content.Declarations.Single(d => d.Path == "batches/hb-2611.yaml").Sha256;
        Assert.Equal(File.ReadAllText(System.IO.Path.Combine(TestLaw.DemoFolder, "batches/hb-2611.yaml")), register.Declaration(hash));
        Assert.Equal("039058c6f2c0cb492c533b0a4d14ef77cc0f78abccced5287d84a1a2011cfb81", entry.Content.Documents[0].Sha256);
    }

    [Fact]
    public void Search_finds_by_batch_substance_oil_and_document_revision()
    {
        Add("batches/hb-2611.yaml", "candles/fig-tin.yaml", "candles/slate-jar.yaml");
        using RegisterBook register = store.In(folder).OpenToRead();
        long[] Numbers(RegisterQuery query) => [.. register.Find(query).Select(e => e.Number)];
        Assert.Equal([1], Numbers(new RegisterQuery(Batch: "HB-2611-02")));
        Assert.Equal([1], Numbers(new RegisterQuery(Oil: "cedar-smoke")));
        Assert.Equal([1, 2], Numbers(new RegisterQuery(Document: "MQ-0533")));
        Assert.Equal([1, 2], Numbers(new RegisterQuery(Document: "mq-0533", Revised: "2026-08-27")));
        Assert.Empty(Numbers(new RegisterQuery(Document: "MQ-0533", Revised: "2020-01-01")));
        Assert.Contains(1L, Numbers(new RegisterQuery(Substance: "97-54-1")));
        Assert.Empty(Numbers(new RegisterQuery(Substance: "' OR 1=1 --")));
    }

    [Fact]
    public void Changed_removed_and_reordered_entries_show()
    {
        Add("batches/hb-2611.yaml", "candles/fig-tin.yaml", "candles/slate-jar.yaml");
        Assert.Empty(Verify());
        Tamper("DROP TRIGGER entry_stays; UPDATE entry SET by = 'somebody else' WHERE number = 2");
        Assert.Contains("entry 2 was changed", Verify());
        Tamper("DROP TRIGGER entry_is_kept; DELETE FROM entry WHERE number = 2");
        Assert.Contains("entry 2 is missing", Verify());
        Tamper("DROP TRIGGER declaration_stays; UPDATE declaration SET text = text || ' '");
        Assert.Contains(Verify(), w => w.Contains("declaration", StringComparison.Ordinal));
    }

    private IReadOnlyList<string> Verify() => store.Verify(folder);

    private void Tamper(string sql) => store.Tamper(folder, sql);

    [Fact]
    public void The_database_itself_refuses_changes()
    {
        Add("candles/fig-tin.yaml");
        Assert.ThrowsAny<DbException>(() => Tamper("UPDATE entry SET by = 'x'"));
        Assert.ThrowsAny<DbException>(() => Tamper("DELETE FROM entry"));
    }

    [Fact]
    public async Task Eight_writers_at_once_lose_nothing()
    {
        (RegisterContent content, IReadOnlyDictionary<string, string> texts) = Content("candles/fig-tin.yaml");
        await Task.WhenAll(
            Enumerable
                .Range(0, 8)
                .Select(w =>
                    Task.Run(() =>
                    {
                        for (int i = 0; i < 8; i++)
                        {
                            using RegisterBook register = store.In(folder).Open();
                            register.Add(content, texts, $"writer {w}", Noon);
                        }
                    })
                )
        );
        using RegisterBook check = store.In(folder).OpenToRead();
        Assert.Equal(64, check.Find(new RegisterQuery()).Count);
        Assert.Empty(check.Verify());
    }

    [Fact]
    public void Killed_in_the_middle_it_holds_together()
    {
        Add("candles/fig-tin.yaml");
        string chandlery = System.IO.Path.Combine(AppContext.BaseDirectory, "chandlery.dll");
        for (int round = 0; round < 6; round++)
        {
            using Process process = Process.Start(
                new ProcessStartInfo(
                    "dotnet",
                    [
                        chandlery,
                        "register",
                        "add",
                        System.IO.Path.Combine(TestLaw.DemoFolder, "candles", "slate-jar.yaml"),
                        "--by",
                        "killed",
                        "--register",
                        store.Named(folder),
                    ]
                )
                {
                    RedirectStandardOutput = true,
                    RedirectStandardError = true,
                }
            )!;
            Thread.Sleep(250 + (round * 60));
            process.Kill();
            process.WaitForExit();
            Assert.Empty(Verify());
        }

        // A killed program may have made its entry, by the clock of this machine.
        AddAt(DateTimeOffset.UtcNow, "candles/fig-tin.yaml");
        Assert.Empty(Verify());
    }

    [Fact]
    public void A_backup_is_a_whole_register()
    {
        Add("batches/hb-2611.yaml", "candles/fig-tin.yaml");
        string copy = System.IO.Path.Combine(folder, "copy.sqlite");
        using (RegisterBook register = store.In(folder).OpenToRead())
        {
            register.BackUp(copy);
        }

        using RegisterBook back = RegisterFile.OpenToRead(copy);
        Assert.Equal(2, back.Find(new RegisterQuery()).Count);
        Assert.Empty(back.Verify());
        Assert.Empty(Directory.GetFiles(folder, "*.tmp"));
    }
}
