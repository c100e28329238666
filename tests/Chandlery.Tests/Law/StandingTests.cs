using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law;

/// <summary>How well the rows of law are founded is counted, and the count stands in the contributors' guide.</summary>
public sealed class StandingTests
{
    private static IReadOnlyList<DataRow> Rows => DataRowFinder.Find(ShippedFiles.Data(null, new Problems()));

    [Fact]
    public void The_contributors_guide_gives_the_rows_by_confidence()
    {
        string guide = File.ReadAllText(Path.Combine(TestLaw.Repository, "DEVELOPERS.md"));
        string[] others =
        [
            .. Rows.Where(r => r.IsLaw)
                .GroupBy(r => r.Folder)
                .Select(edition =>
                    $"| {edition.Key} | {Count(edition, Standing.Checked)} | {Count(edition, Standing.FromMemory)} | {Count(edition, Standing.NotSaid)} |"
                )
                .Where(line => !guide.Contains(line, StringComparison.Ordinal)),
        ];
        Assert.True(others.Length == 0, $"DEVELOPERS.md has other figures. Put this there:\n{string.Join('\n', others)}");
    }

    [Fact]
    public void A_row_that_owns_to_memory_is_found_wherever_it_stands()
    {
        var texts = new Dictionary<string, string>
        {
            ["law/x/a.yaml"] =
                "rules:\n  - { group: g, clause: c, confidence: compared }\n  - { group: h, clause: d (from memory) }\n  - { group: i, clause: e }",
            ["law/x/cases.yaml"] = "cases: [{ case: c, clause: from memory }]",
            ["languages/en/b.yaml"] = "checked: from memory\nrows: [{ clause: c }]",
            ["places.yaml"] = "# Places, the second\n# of them from memory.\nplaces: []\n# Compared with the act.\nmore: []",
        };
        IReadOnlyList<DataRow> rows = DataRowFinder.Find(texts);
        Assert.Equal(
            [
                "languages/en/b.yaml FromMemory",
                "rows FromMemory",
                "rules: g Checked",
                "rules: h FromMemory",
                "rules: i NotSaid",
                "remark before places: [] FromMemory",
            ],
            rows.Select(r => $"{r.Name} {r.Standing}")
        );
        Assert.Equal("data/law/x/a.yaml:3:5", rows[3].Place.ToString());
    }

    private static int Count(IEnumerable<DataRow> rows, Standing standing) => rows.Count(r => r.Standing == standing);
}
