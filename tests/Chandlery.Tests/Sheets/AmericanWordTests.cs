using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Paper.Drawing;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Sheets;

/// <summary>Papers for the United States say the words of the United States, and others stay as they are.</summary>
public sealed class AmericanWordTests
{
    private const string British = @"(?i)\b(draughts?|fire service|vessels?|colour|odour|vapour)\b";

    [Theory]
    [InlineData("burn-card")]
    [InlineData("pocket-card")]
    [InlineData("shop-card")]
    [InlineData("safety-sheet")]
    [InlineData("product-information")]
    public void No_paper_for_the_United_States_says_a_British_word(string paper) => Assert.DoesNotMatch(British, Printed(paper, "US"));

    [Theory]
    [InlineData("US", "drafts", "The container gets hot", "fire department")]
    [InlineData("IE", "draughts", "The vessel gets hot", "fire service")]
    public void The_same_card_says_it_in_the_places_words(string place, string air, string hot, string brigade)
    {
        string text = Printed("burn-card", place);
        Assert.Contains(air, text, StringComparison.Ordinal);
        Assert.Contains(hot, text, StringComparison.Ordinal);
        Assert.Contains(brigade, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Marks_and_parts_of_words_stay_and_capitals_are_kept()
    {
        var local = new LocalWords(new Dictionary<string, string> { ["colour"] = "color", ["vessel"] = "container" });
        Assert.Equal("Color of {colour}: container, vesselled.", local.In("Colour of {colour}: vessel, vesselled."));
    }

    [Fact]
    public void The_laws_statements_stay_word_for_word()
    {
        Assessment a = TestLaw.Demo("candles/fig-tin.yaml", "US");
        Assert.Equal(TestLaw.Lawbook.FindLanguage("en")!.Official, a.Languages[0].Official);
        Assert.Equal(TestLaw.Lawbook.FindLanguage("en")!.Printed, a.Languages[0].Printed);
    }

    private static string Printed(string paper, string place) =>
        PrintedText.Of(PdfDrawing.Draw(TestLaw.Made(paper, TestLaw.Demo("candles/fig-tin.yaml", place)).Document));
}
