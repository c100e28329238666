using Chandlery.Register;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Files;

/// <summary>The same in a file, and the texts that only a file keeps apart.</summary>
public sealed class SqliteRegisterTruthTests() : RegisterTruthTests(new SqliteTestStore())
{
    private static long[] Found(SqliteTestStore store, MakersFolder folder)
    {
        using RegisterBook register = store.In(folder.Path).OpenToRead();
        return [.. register.Stream(new RegisterQuery(Substance: "substance 1"), _ => { }, RegisterStretch.All).Select(e => e.Number)];
    }

    [Fact]
    public void A_text_that_is_not_known_hides_no_entry()
    {
        using var folder = new MakersFolder();
        var store = new SqliteTestStore();
        store.Fill(folder.Path);
        long[] before = Found(store, folder);
        Assert.NotEmpty(before);
        store.Tamper(folder.Path, "DELETE FROM known_text WHERE value LIKE 'Substance 1%'");
        Assert.Equal(before, Found(store, folder));
        Assert.Contains(
            store.Verify(folder.Path),
            w => w.StartsWith("known_text lacks 'Substance 1', which stands in held_substance", StringComparison.Ordinal)
        );
        using (RegisterBook register = store.In(folder.Path).Open())
        {
            Assert.Empty(register.Rebuild());
        }

        Assert.Empty(store.Verify(folder.Path));
        Assert.Equal(before, Found(store, folder));
    }

    [Fact]
    public void A_register_of_an_older_program_gets_its_texts_when_somebody_adds()
    {
        using var folder = new MakersFolder();
        var store = new SqliteTestStore();
        store.Fill(folder.Path);
        long[] before = Found(store, folder);
        store.Tamper(folder.Path, "DROP TRIGGER used_oil_known; DROP TRIGGER held_substance_known; DROP TABLE known_text");
        Assert.Equal(before, Found(store, folder));
        Assert.Empty(store.Verify(folder.Path));
        store.In(folder.Path).Open().Dispose();
        Assert.Equal(before, Found(store, folder));
        Assert.Empty(store.Verify(folder.Path));
        using RegisterBook register = store.In(folder.Path).OpenToRead();
        Assert.True(register.Store.KnowsTexts);
        Assert.Null(register.SearchDoubt);
    }
}
