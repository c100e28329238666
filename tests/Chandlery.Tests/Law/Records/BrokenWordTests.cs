using Chandlery.Core.Law;

namespace Chandlery.Tests.Law.Records;

/// <summary>Where a text may be broken: only in whole words of its own list.</summary>
public sealed class BrokenWordTests
{
    private static readonly WordBreaks Breaks = new(["won-der-ful", "can-dle"]);

    [Theory]
    [InlineData("wonderful", "won|der|ful")]
    [InlineData("Candle", "Can|dle")]
    [InlineData("a candle, wonderful.", "a can|dle, won|der|ful.")]
    [InlineData("a wonderful", "a won|der|ful")]
    [InlineData("candles", "candles")]
    [InlineData("candl", "candl")]
    [InlineData("tea-candle", "tea-candle")]
    [InlineData("candle-stick", "candle-stick")]
    [InlineData("candle's", "candle's")]
    [InlineData("l’candle", "l’candle")]
    [InlineData("4candle", "4candle")]
    [InlineData("candle4", "candle4")]
    [InlineData("", "")]
    public void A_word_is_marked_where_it_stands_alone(string text, string marked) =>
        Assert.Equal(marked, Breaks.In(text).Replace(WordBreaks.Soft, '|'));

    [Fact]
    public void The_words_are_known_without_their_hyphens() => Assert.Equal(["wonderful", "candle"], Breaks.Words);

    [Fact]
    public void Without_words_every_text_stays_the_same_text()
    {
        const string Text = "wonderful";
        Assert.Same(Text, WordBreaks.None.In(Text));
        Assert.Empty(WordBreaks.None.Words);
    }
}
