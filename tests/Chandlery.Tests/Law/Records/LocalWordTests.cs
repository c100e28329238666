using Chandlery.Core.Law;

namespace Chandlery.Tests.Law.Records;

/// <summary>Words that are others at a place.</summary>
public sealed class LocalWordTests
{
    private static readonly LocalWords Local = new(new Dictionary<string, string> { ["wick"] = "reed", ["wax melt"] = "scent tart" });

    [Theory]
    [InlineData("Trim the wick.", "Trim the reed.")]
    [InlineData("Wick: short.", "Reed: short.")]
    [InlineData("WICK", "Reed")]
    [InlineData("wicks, {wick}, candlewick", "wicks, {wick}, candlewick")]
    [InlineData("a wax melt", "a scent tart")]
    public void A_whole_word_is_another(string text, string there) => Assert.Equal(there, Local.In(text));

    [Fact]
    public void None_leaves_every_text() => Assert.Equal("wick", LocalWords.None.In("wick"));
}
