using Chandlery.Paper.Blocks;
using Chandlery.Paper.Markup;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

/// <summary>Every kind of block is in the list, reads its own element and knows its own drawings.</summary>
public class BlockTests
{
    private static Block Read(string element)
    {
        var problems = new Problems();
        MarkupDocument? document = MarkupReader.Read($"<paper>{element}</paper>", "t", problems);
        Assert.Empty(problems.Found);
        return Assert.Single(document!.Blocks);
    }

    public static TheoryData<string, string> Elements =>
        new()
        {
            { "<p size=\"2\">a <b>b</b></p>", nameof(Paragraph) },
            { "<ends right=\"b\">a</ends>", nameof(Ends) },
            { "<pictograms codes=\"GHS07 GHS09\"/>", nameof(Pictograms) },
            { "<symbols><s name=\"warning\">c</s></symbols>", nameof(SymbolRow) },
            { "<messages><m symbol=\"fire\">d</m></messages>", nameof(Messages) },
            { "<codes qr=\"q\"/>", nameof(Codes) },
            { "<table widths=\"1 1\"><tr><td>e</td><td>f</td></tr></table>", nameof(Table) },
            { "<plots axis=\"g\"><plot title=\"h\"><line name=\"i\">1:2 2: 3:4</line></plot></plots>", nameof(Plots) },
            { "<drawing name=\"j\" about=\"k\" tallest=\"40\"/>", nameof(Depiction) },
            { "<gap/>", nameof(Gap) },
            { "<rule/>", nameof(Rule) },
            { "<column/>", nameof(ColumnStart) },
            { "<push/>", nameof(Push) },
        };

    [Theory]
    [MemberData(nameof(Elements))]
    public void AnElementBecomesItsBlock(string element, string block) => Assert.Equal(block, Read(element).GetType().Name);

    [Fact]
    public void EveryBlockIsInTheList()
    {
        IEnumerable<string> blocks = typeof(Block).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Block))).Select(t => t.Name);
        Assert.Equal(blocks.Order(), Elements.Select(e => (string)e[1]).Order());
        Assert.Equal(BlockKinds.All.Count, blocks.Count());
    }

    [Fact]
    public void AnUnknownElementIsSaidWithTheKnownOnes()
    {
        var problems = new Problems();
        Assert.Null(MarkupReader.Read("<paper>\n  <box/>\n</paper>", "t", problems));
        Problem problem = Assert.Single(problems.Found);
        Assert.Equal(2, problem.Place.Line);
        Assert.Equal("'box' is no element of this markup.", problem.What);
        Assert.Equal(
            "Known: p, ends, pictograms, symbols, messages, codes, table, plots, drawing, gap, rule, column, push.",
            problem.Remedy
        );
    }

    [Theory]
    [InlineData("<pictograms codes=\"GHS99\"/>", "GHS99")]
    [InlineData("<symbols><s name=\"comet\"></s></symbols>", "comet")]
    [InlineData("<messages><m symbol=\"comet\">a</m></messages>", "comet")]
    public void ADrawingThatDoesNotExistIsKnownToItsBlock(string element, string name) => Assert.Equal([name], Read(element).SymbolNames);

    [Theory]
    [InlineData("<plots/>", "There is no plot in it.")]
    [InlineData("<plots><plot><line>1:2 three</line></plot></plots>", "'three' is no point of a plot.")]
    [InlineData("<plots><plot><line>1:x</line></plot></plots>", "'1:x' is no point of a plot.")]
    public void APlotThatCannotBeReadIsSaid(string element, string what)
    {
        var problems = new Problems();
        MarkupReader.Read($"<paper>{element}</paper>", "t", problems);
        Assert.Equal(what, Assert.Single(problems.Found).What);
    }
}
