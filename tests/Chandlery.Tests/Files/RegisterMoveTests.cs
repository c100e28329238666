using System.Security.Cryptography;
using Chandlery.Register;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Files;

/// <summary>A register goes from a file into a database and back without losing a letter; documents come out as they went in.</summary>
[Collection(OnPostgres.Name)]
public sealed class RegisterMoveTests(PostgresServer server) : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 25, 12, 0, 0, TimeSpan.Zero);
    private static readonly byte[] Paper = [.. Enumerable.Range(0, 70_000).Select(i => (byte)(i * 7))];
    private readonly string folder = Directory.CreateTempSubdirectory("chandlery-register-").FullName;
    private readonly PostgresTestStore shared = new(server);
    private readonly SqliteTestStore file = new();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static string HashOf(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static void Keep(RegisterPlace place)
    {
        using RegisterBook register = place.Open();
        register.Add(
            TestRegisters.Contents(1).Single() with
            {
                Documents = [new IssuedDocument("paper.pdf", HashOf(Paper), true)],
            },
            TestRegisters.Texts,
            "M. Hale",
            Noon,
            new Dictionary<string, byte[]> { [HashOf(Paper)] = Paper }
        );
    }

    private static List<RegisterEntry> Entries(RegisterPlace place)
    {
        using RegisterBook register = place.OpenToRead();
        Assert.Empty(register.Verify());
        return [.. register.Find(new RegisterQuery())];
    }

    [Fact]
    public void There_and_back_every_hash_and_document_stays()
    {
        file.Fill(folder);
        Keep(file.In(folder));
        string back = Path.Combine(folder, "back.sqlite");
        (int code, string output, string errors) = Command.Run("register", "move", file.Named(folder), shared.Named(folder));
        Assert.True(code == 0, errors);
        Assert.StartsWith("301 entries carried over; the register has 301 now.", output, StringComparison.Ordinal);
        (code, _, errors) = Command.Run("register", "move", shared.Named(folder), back);
        Assert.True(code == 0, errors);
        List<RegisterEntry> before = Entries(file.In(folder));
        Assert.Equal(301, before.Count);
        Assert.Equal(before.Select(e => e.Hash), Entries(shared.In(folder)).Select(e => e.Hash));
        Assert.Equal(before.Select(e => e.Hash), Entries(RegisterPlace.Named(back)).Select(e => e.Hash));
        using RegisterBook returned = RegisterFile.OpenToRead(back);
        Assert.Equal(Paper, returned.Document(HashOf(Paper)));

        // What is entered later is carried over alone, onto the beginning that stands there.
        Keep(RegisterPlace.Named(back));
        Assert.StartsWith(
            "1 entry carried over; the register has 302 now.",
            Command.Run("register", "move", back, shared.Named(folder)).Output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Other_entries_and_damaged_ones_are_not_carried_over()
    {
        file.Fill(folder);
        Keep(shared.In(folder));
        (int code, _, string errors) = Command.Run("register", "move", file.Named(folder), shared.Named(folder));
        Assert.Equal(2, code);
        Assert.Contains("it holds other entries than", errors, StringComparison.Ordinal);
        Assert.Single(Entries(shared.In(folder)));
        file.Tamper(folder, "UPDATE held_substance SET cas = '1-1-1' WHERE number = 250");
        string target = Path.Combine(folder, "target.sqlite");
        (code, _, errors) = Command.Run("register", "move", file.Named(folder), target);
        Assert.Equal(2, code);
        Assert.Contains("entry 250: held_substance does not say what is signed", errors, StringComparison.Ordinal);
        using RegisterBook untouched = RegisterFile.OpenToRead(target);
        Assert.Equal(0, untouched.Head().Number);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_document_comes_out_byte_for_byte_and_a_changed_or_missing_one_is_told(bool isShared)
    {
        TestStore store = isShared ? shared : file;
        Keep(store.In(folder));
        string taken = Path.Combine(folder, "taken.pdf");
        (int code, _, string errors) = Command.Run("register", "document", store.Named(folder), HashOf(Paper)[..12], "--out", taken);
        Assert.True(code == 0, errors);
        Assert.Equal(Paper, File.ReadAllBytes(taken));
        string text = RegisterFile.Sha256("declares: candle\n");
        Assert.Equal(0, Command.Run("register", "document", store.Named(folder), text, "--out", taken).Code);
        Assert.Equal("declares: candle\n", File.ReadAllText(taken));
        Assert.Contains(
            "keeps no document",
            Command.Run("register", "document", store.Named(folder), "0123456789", "--out", taken).Errors,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "is no hash",
            Command.Run("register", "document", store.Named(folder), "paper.pdf", "--out", taken).Errors,
            StringComparison.Ordinal
        );
        store.Tamper(folder, $"DROP TRIGGER document_stays; UPDATE document SET bytes = {(isShared ? "'\\x00'::bytea" : "x'00'")}");
        Assert.Equal([$"the document {HashOf(Paper)} was changed"], store.Verify(folder));
        Assert.Contains(
            "was changed",
            Command.Run("register", "document", store.Named(folder), HashOf(Paper), "--out", taken).Errors,
            StringComparison.Ordinal
        );
        store.Tamper(folder, "DROP TRIGGER document_is_kept; DELETE FROM document");
        Assert.Equal(["entry 1: the document paper.pdf is missing"], store.Verify(folder));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_backup_while_others_write_holds_together(bool isShared)
    {
        TestStore store = isShared ? shared : file;
        store.Fill(folder);
        using var over = new CancellationTokenSource();
        Task writing = Task.Run(() =>
        {
            while (!over.IsCancellationRequested)
            {
                Keep(store.In(folder));
            }
        });
        string copy = Path.Combine(folder, "copy.sqlite");
        (int code, _, string errors) = Command.Run("register", "backup", store.Named(folder), copy);
        await over.CancelAsync();
        await writing;
        Assert.True(code == 0, errors);
        List<RegisterEntry> entries = Entries(RegisterPlace.Named(copy));
        Assert.True(entries.Count >= TestRegisters.FilledCount);
        Assert.Equal(Entries(store.In(folder)).Take(entries.Count).Select(e => e.Hash), entries.Select(e => e.Hash));
        Assert.Empty(Directory.GetFiles(folder, "*.tmp*"));
    }
}
