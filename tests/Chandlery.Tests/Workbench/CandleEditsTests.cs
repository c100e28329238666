using Chandlery.Workbench;

namespace Chandlery.Tests.Workbench;

/// <summary>Typed figures on their way into the file.</summary>
public sealed class CandleEditsTests
{
    private const string Text = "name: Jar\nnetGrams: 80\nwicks: { count: 1 }\n";

    [Theory]
    [InlineData("2,9", "netGrams: 2.9")]
    [InlineData("12,50", "netGrams: 12.50")]
    [InlineData("0,125", "netGrams: 0.125")]
    [InlineData("2900", "netGrams: 2900")]
    [InlineData("2,900", "netGrams: \"2,900\"")]
    [InlineData("1,600", "netGrams: \"1,600\"")]
    [InlineData("1,600,000", "netGrams: \"1,600,000\"")]
    public void A_comma_before_three_figures_is_not_taken_for_a_decimal_mark(string typed, string written) =>
        Assert.Contains(written + "\n", new CandleEdits(NetGrams: typed).ApplyTo(Text, []), StringComparison.Ordinal);

    [Fact]
    public void A_name_is_no_figure() =>
        Assert.Contains("name: \"7,5\"\n", new CandleEdits(Name: "7,5").ApplyTo(Text, []), StringComparison.Ordinal);
}
