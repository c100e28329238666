using Chandlery.Core.Law.Reading;

namespace Chandlery.Tests.Law.Readers;

/// <summary>Rows of the data that cite a clause or say how they were checked, whatever kind of file they stand in.</summary>
public sealed class FoundRowTests
{
    private static string[] Found(string path, string text) =>
        [
            .. DataRowFinder
                .Find(new Dictionary<string, string> { [path] = text })
                .Select(r => $"{r.Folder}{(r.IsLaw ? ", law" : "")}, {r.Place.Line}:{r.Place.Column}, {r.Name}, {r.Standing}, {r.Says}"),
        ];

    [Theory]
    [InlineData("law/x/a.yaml", "clause: c", "x, law, 1:1, law/x/a.yaml, NotSaid, ")]
    [InlineData("product-safety/x/a.yaml", "clause: c", "product-safety/x, law, 1:1, product-safety/x/a.yaml, NotSaid, ")]
    [InlineData("languages/en/a.yaml", "clause: c", "en, 1:1, languages/en/a.yaml, NotSaid, ")]
    [InlineData("kinds/a.yaml", "clause: c", "kinds, 1:1, kinds/a.yaml, NotSaid, ")]
    [InlineData("places.yaml", "clause: c", "places.yaml, 1:1, places.yaml, NotSaid, ")]
    public void A_row_says_where_it_belongs(string path, string text, string row) => Assert.Equal([row], Found(path, text));

    [Theory]
    [InlineData("a: { confidence: read }", "a, Checked, read")]
    [InlineData("a: { confidence: From memory }", "a, FromMemory, From memory")]
    [InlineData("a: { clause: c, note: [one, said from memory, FROM MEMORY] }", "a, FromMemory, said from memory | FROM MEMORY")]
    [InlineData("a: { clause: c, name: n, id: i }", "a: i, NotSaid, ")]
    [InlineData("a: { clause: c, in: \"1\" }", "a: 1, NotSaid, ")]
    [InlineData("a: { clause: c, hazards: [H1, H2] }", "a: H1, H2, NotSaid, ")]
    [InlineData("a: { clause: c, all: [H1] }", "a: H1, NotSaid, ")]
    [InlineData("a: { clause: c, result: H3 }", "a: H3, NotSaid, ")]
    [InlineData("a: { clause: c, hazard: H4 }", "a: H4, NotSaid, ")]
    [InlineData("a: { clause: c, names: [n1] }", "a: n1, NotSaid, ")]
    [InlineData("a: { clause: c, other: n }", "a, NotSaid, ")]
    [InlineData("a: [{ clause: c, group: g }]", "a: g, NotSaid, ")]
    public void A_row_is_called_by_what_it_is_about(string text, string row) =>
        Assert.Equal([row], Found("x.yaml", text).Select(r => r.Split(", ", 3)[2]));

    [Fact]
    public void What_a_whole_file_or_group_says_holds_for_its_rows() =>
        Assert.Equal(
            [
                "x.yaml, 1:1, x.yaml, Checked, read",
                "x.yaml, 2:4, a, Checked, read",
                "x.yaml, 3:4, b, FromMemory, from memory",
                "x.yaml, 3:45, c, FromMemory, from memory",
            ],
            Found("x.yaml", "confidence: read\na: { clause: c }\nb: { confidence: from memory, clause: c, c: { clause: d } }")
        );

    [Fact]
    public void A_remark_that_owns_to_memory_is_a_row() =>
        Assert.Equal(
            [
                "x.yaml, 1:1, remark before a: 1, FromMemory, Two lines from memory",
                "x.yaml, 6:1, remark before b, FromMemory, from memory",
                "x.yaml, 8:1, remark before , FromMemory, the end, from memory",
            ],
            Found("x.yaml", "# Two lines\n# from memory\na: 1 # beside\n# not at all\n\n# from memory\nb:\n# the end, from memory")
        );

    [Fact]
    public void Cases_are_no_rows_and_files_stand_in_order() =>
        Assert.Equal(
            ["a.yaml", "b.yaml"],
            DataRowFinder
                .Find(
                    new Dictionary<string, string>
                    {
                        ["b.yaml"] = "clause: c",
                        ["law/x/cases.yaml"] = "clause: c",
                        ["a.yaml"] = "clause: c",
                    }
                )
                .Select(r => r.Name)
        );
}
