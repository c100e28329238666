using Chandlery.Paper.Papers;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

/// <summary>Tables over several pages, wherever the page happens to end.</summary>
public sealed class LongTableTests
{
    public static TheoryData<int> Fillings() => [.. Enumerable.Range(0, 24)];

    [Theory]
    [MemberData(nameof(Fillings))]
    public void A_tables_header_stands_on_every_page_of_it_and_never_alone(int linesBefore)
    {
        string before = string.Concat(Enumerable.Range(0, linesBefore).Select(i => $"<p>Line {i}</p>"));
        string rows = string.Concat(Enumerable.Range(0, 30).Select(i => $"<tr><td>Row {i}</td><td>value</td></tr>"));
        IReadOnlyList<Scene> pages = Pages(
            $"{before}<p size=\"1.2\">Heading</p><table widths=\"50 50\"><tr><th>Header</th><th>Other</th></tr>{rows}</table>"
        );
        Assert.True(pages.Count > 1);
        foreach (Scene page in pages)
        {
            string[] texts = Texts(page);
            bool hasRows = texts.Any(t => t.StartsWith("Row ", StringComparison.Ordinal));
            Assert.Equal(hasRows ? 1 : 0, texts.Count(t => t == "Header"));
            Assert.True(hasRows || !texts.Contains("Heading"), "the heading stands alone");
        }
    }

    [Fact]
    public void Pictograms_leave_a_table_whole()
    {
        string rows = string.Concat(Enumerable.Range(0, 12).Select(i => $"<tr><td>Row {i}</td><td>value</td></tr>"));
        Scene page = Pages($"<pictograms codes=\"GHS07\" text=\"below\"/><table widths=\"50 50\">{rows}</table>")[0];
        Assert.Single(
            page.Items.SelectMany(i => i.All)
                .OfType<TextItem>()
                .Where(t => t.Shaped.Text.StartsWith("Row ", StringComparison.Ordinal))
                .Select(t => Math.Round(t.XMm, 3))
                .Distinct()
        );
    }

    private static IReadOnlyList<Scene> Pages(string blocks)
    {
        var problems = new Problems();
        PaperDocument? document = ManyPages.FromMarkup(
            $"<paper title=\"t\" width=\"105\" height=\"148\" margin=\"10\" x-height=\"1.5\">{blocks}</paper>",
            "table",
            TestLaw.Shop,
            problems
        );
        Assert.Empty(problems.Found);
        return document!.Pages;
    }

    private static string[] Texts(Scene page) => [.. page.Items.SelectMany(i => i.All).OfType<TextItem>().Select(t => t.Shaped.Text)];
}
