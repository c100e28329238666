namespace Chandlery.Tests.Law.Readers;

/// <summary>Tables with tabs: what is said of a line that is wrong, with its place and what to write instead.</summary>
public sealed class TableTests
{
    private const string Known = "substances/known.tsv";
    private const string Entries = "substances/annex-vi.tsv";

    [Theory]
    [InlineData(
        Known,
        "kind\tallergen",
        "sort\tallergen",
        "1:1: The table has another head than it must have. Write cas, ec, names, kind, allergen, with a tab between them."
    )]
    [InlineData(Known, "\tSpirit\n", "\n", "7:1: The line has 4 cells. Write as many as the head: 5.")]
    [InlineData(Known, "\tSpirit\n", "\tSpirit\t\n", "7:1: The line has 6 cells. Write as many as the head: 5.")]
    [InlineData(Known, "67-56-1", "67-56-2", "5:1: CAS number 67-56-2 fails its check digit: the digits call for 1, not 2.")]
    [InlineData(Known, "200-578-6", "200-578-7", "7:1: EC number 200-578-7 fails its check digit: the digits call for 6, not 7.")]
    [InlineData(
        Entries,
        "act\tfrom",
        "act\tuntil",
        "1:1: The table has another head than it must have. "
            + "Write index, cas, ec, name, classes, supplemental, limits, notes, act, from, with a tab between them."
    )]
    [InlineData(Entries, "FIRST", "FIRSD", "2:1: 'FIRSD' is no act of annex-vi.yaml. Did you mean 'FIRST'?")]
    public void A_line_that_is_wrong_is_refused_with_its_place(string file, string from, string to, string says)
    {
        var texts = new Dictionary<string, string>(InventedLaw.Texts.ToDictionary());
        Assert.Contains(from, texts[file], StringComparison.Ordinal);
        texts[file] = texts[file].Replace(from, to, StringComparison.Ordinal);
        Assert.Equal($"data/{file}:{says}", $"{Assert.Single(InventedLaw.Read(texts).Problems.Found)}");
    }

    [Fact]
    public void Lines_may_end_as_on_Windows()
    {
        var texts = new Dictionary<string, string>(InventedLaw.Texts.ToDictionary());
        texts[Known] = texts[Known].Replace("\n", "\r\n", StringComparison.Ordinal);
        texts[Entries] = texts[Entries].Replace("\n", "\r\n", StringComparison.Ordinal);
        Assert.Empty(InventedLaw.Read(texts).Problems.Found);
    }
}
