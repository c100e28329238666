using System.Text.RegularExpressions;
using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Tests.Sheets;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Paper;

/// <summary>Papers have the apostrophes of a typesetter, whatever was typed.</summary>
public sealed partial class ApostropheTests
{
    [Theory]
    [InlineData("l'eau et d'autres", "l’eau et d’autres")]
    [InlineData("the suppliers' sheets", "the suppliers’ sheets")]
    [InlineData("write 'ufi' into the candle's file", "write ‘ufi’ into the candle’s file")]
    [InlineData("('--since')", "(‘--since’)")]
    [InlineData("N,N'-dimethylaniline, 4,4'-methylenedianiline", "N,N'-dimethylaniline, 4,4'-methylenedianiline")]
    [InlineData("nothing to do", "nothing to do")]
    public void They_are_curved_and_primes_of_chemical_names_are_not(string typed, string printed)
    {
        Assert.Equal(printed, Apostrophes.In(typed));
        Assert.Equal(printed, Apostrophes.In(printed));
    }

    [Theory]
    [InlineData("IE")]
    [InlineData("FR")]
    [InlineData("IT")]
    public void No_paper_has_a_straight_one_in_a_word(string place)
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml", place);
        int papers = 0;
        foreach (PaperKind kind in PaperList.Own.All)
        {
            if (TestLaw.Make(kind, a) is MadePaper made)
            {
                papers++;
                Match straight = Straight().Match(PrintedText.Of(PdfDrawing.Draw(made.Document)));
                Assert.False(straight.Success, $"{kind.Id}: {straight.Value}");
            }
        }

        Assert.True(papers > 5, $"{papers} papers");
    }

    [GeneratedRegex(@".{0,20}\p{L}'\p{L}.{0,20}")]
    private static partial Regex Straight();
}
