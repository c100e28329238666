using Chandlery.Cli;

namespace Chandlery.Tests.Cli;

/// <summary>Tables on a terminal that is narrower than their content.</summary>
public sealed class TextTableTests
{
    private static string[] Lines(int width)
    {
        var table = new TextTable("Candle", "Sold in", "Classes", "What follows");
        table.Add(
            "Harbour Bowl",
            "Ireland, Germany, Austria",
            "Skin Sens. 1, Aquatic Chronic 3",
            "A warning label with a pictogram and a signal word."
        );
        table.Add("Fig Tin", "Ireland", "none", "https://tarnvey.example/a-very-long-address-that-holds-no-blank-at-all");
        return table.Render(width, Ink.None).Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(120)]
    public void No_line_is_wider_than_the_terminal_and_nothing_is_lost(int width)
    {
        string[] lines = Lines(width);
        Assert.All(lines, l => Assert.InRange(l.Length, 0, width));
        string Letters(IEnumerable<string> some) => string.Concat(string.Concat(some).Where(char.IsLetterOrDigit).Order());
        Assert.Equal(Letters(Lines(400)), Letters(lines));
    }

    [Fact]
    public void A_table_that_fits_is_as_wide_as_its_content()
    {
        string[] lines = Lines(400);
        Assert.Equal(4, lines.Length);
        Assert.StartsWith(
            "Harbour Bowl  Ireland, Germany, Austria  Skin Sens. 1, Aquatic Chronic 3  A warning",
            lines[2],
            StringComparison.Ordinal
        );
    }
}
