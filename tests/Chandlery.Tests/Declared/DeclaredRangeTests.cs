using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Declared;

namespace Chandlery.Tests.Declared;

public class DeclaredRangeTests
{
    [Theory]
    [InlineData("2.5", 2.5, 2.5)]
    [InlineData("2,5 %", 2.5, 2.5)]
    [InlineData("10 - <25 %", 10, 25)]
    [InlineData("10-25", 10, 25)]
    [InlineData(">= 10 - < 25 %", 10, 25)]
    [InlineData("≥ 10 – < 25 %", 10, 25)]
    [InlineData(">=0.1-<1", 0.1, 1)]
    [InlineData("0,1 to 1", 0.1, 1)]
    [InlineData("<= 1", 0, 1)]
    [InlineData("< 0,1 %", 0, 0.1)]
    [InlineData(">= 50 %", 50, 100)]
    [InlineData("> 90", 90, 100)]
    [InlineData("100", 100, 100)]
    public void ReadsWhatSheetsPrint(string text, double low, double high)
    {
        DeclaredRange range = DeclaredRange.Parse(text).Value;
        Assert.Equal(low, range.Low.Value);
        Assert.Equal(high, range.High.Value);
    }

    [Theory]
    [InlineData("25 - 10", "runs backwards")]
    [InlineData("120", "over 100")]
    [InlineData("0", "nothing at all")]
    [InlineData("some", "write it as the sheet does")]
    [InlineData("-5", "write it as the sheet does")]
    [InlineData("NaN", "write it as the sheet does")]
    [InlineData("1e3", "write it as the sheet does")]
    [InlineData("1,000", "decimal or a thousand")]
    [InlineData("", "write it as the sheet does")]
    [InlineData("\u0661\u0660", "write it as the sheet does")]
    public void RefusesWhatCannotBeAShare(string text, string expected)
    {
        Assert.Contains(expected, DeclaredRange.Parse(text).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void MarksAnOpenUpperEnd() => Assert.True(DeclaredRange.Parse(">= 50").Value.OpenAbove);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(100.1)]
    [InlineData(double.NaN)]
    public void No_exact_share_is_nothing_or_more_than_the_whole(double percent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DeclaredRange.Exactly(percent));
}
