using Chandlery.Paper.Blocks;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Paper;

/// <summary>Where lines break, and where they must not.</summary>
public class LineTests
{
    private static List<Piece> Pieces(string text) => LineBreaker.Pieces([new Span(text, Weight.Regular)]);

    [Theory]
    [InlineData("at least 10 cm between candles", "10 cm")]
    [InlineData("Net Wt 10.5 oz (300 / g)", "10.5 oz")]
    [InlineData("Call +999 20 555 014 today", "+999 20 555 014")]
    [InlineData("12345 Hafenstadt", "12345 Hafenstadt")]
    [InlineData("limit (≤ 1,95 %) of it", "1,95 %)")]
    public void FiguresKeepWhatBelongsToThem(string text, string whole) =>
        Assert.Contains(Pieces(text), p => p.Text.Contains(whole, StringComparison.Ordinal));

    [Fact]
    public void AHouseNumberBehindItsStreetStaysWithIt() =>
        Assert.Contains(Pieces("Unterer Strandweg 3, 12345 Hafenstadt"), p => p.Text == "Strandweg 3,");

    [Outside("CLP Annex VI, Table 1.1: the abbreviations of classes and categories")]
    [Theory]
    [InlineData(
        "Flam. Liq. 3, H226; Skin Irrit. 2, H315; Aquatic Chronic 1, H410",
        "Flam. Liq. 3, H226;",
        "Skin Irrit. 2, H315;",
        "Aquatic Chronic 1, H410"
    )]
    [InlineData("STOT SE 3, H336; Repr. 2, H361; Acute Tox. 4, H302", "STOT SE 3, H336;", "Repr. 2, H361;", "Acute Tox. 4, H302")]
    [InlineData("M (acute) = 1; M (chronic) = 1", "M (acute) = 1;", "M (chronic) = 1")]
    public void A_class_stays_with_its_category_and_statement(string text, params string[] lines) =>
        Assert.Equal(lines, Pieces(text).Select(p => p.Text));

    [Fact]
    public void AComparisonStaysWithItsFigure() => Assert.Contains(Pieces("keep ≥ 20 cm apart"), p => p.Text == "≥ 20 cm");

    [Fact]
    public void ACommaBehindABoldNameNeverBeginsALine()
    {
        List<Piece> pieces = LineBreaker.Pieces([new Span("Tarnvey Candle Shed", Weight.Bold), new Span(", 3 Kelp Lane", Weight.Regular)]);
        double width = pieces.Take(3).Sum(p => p.WidthEm) + 0.6;
        int first = LineBreaker.Fill(pieces, 0, width, 1, out _);
        Assert.NotEqual(",", pieces[first].Text);
    }

    [Theory]
    [InlineData("Keep it away from fire, sparks, heat and sun; never light it.")]
    [InlineData("This card helps; local fire rules and the advice of competent people come first.")]
    public void No_last_line_is_a_short_word_that_was_left_over(string text)
    {
        List<Piece> pieces = Pieces(text);
        int leftOver = 0;
        for (double width = 8; width < 24; width += 0.1)
        {
            List<int> greedy = Greedy(pieces, width);
            if (greedy.Count > 1 && greedy[^1] == 1 && pieces[^1].WidthEm < width / 7)
            {
                leftOver++;
                int[] even = EvenLines.Break(pieces, [.. Enumerable.Repeat(width, greedy.Count)], 1)!;
                Assert.True(even[^1] > 1, $"{width}: {string.Join(" ", even)}");
            }
        }

        Assert.NotEqual(0, leftOver);
    }

    [Fact]
    public void AParagraphIsAsEvenAsItsWordsAllow()
    {
        List<Piece> pieces = Pieces(
            "In case of skin irritation get medical advice and wash contaminated clothing before you wear it again, whatever the weather."
        );
        const double width = 16;
        List<int> greedy = Greedy(pieces, width);
        int[] even = EvenLines.Break(pieces, [.. Enumerable.Repeat(width, greedy.Count)], 1)!;
        Assert.Equal(pieces.Count, even.Sum());
        Assert.True(Raggedness(pieces, even, width) < Raggedness(pieces, greedy, width));
    }

    private static List<int> Greedy(List<Piece> pieces, double width)
    {
        List<int> counts = [];
        for (int at = 0; at < pieces.Count; at += counts[^1])
        {
            counts.Add(LineBreaker.Fill(pieces, at, width, 1, out _));
        }

        return counts;
    }

    private static double Raggedness(List<Piece> pieces, IReadOnlyList<int> counts, double width)
    {
        double sum = 0;
        int at = 0;
        for (int line = 0; line < counts.Count - 1; line++)
        {
            double used = pieces
                .Skip(at)
                .Take(counts[line])
                .Select((p, i) => p.WidthEm + (i > 0 && p.SpaceBefore ? Face.Of(Weight.Regular).BlankWidth : 0))
                .Sum();
            Assert.True(used <= width + 1e-9);
            sum += (width - used) * (width - used);
            at += counts[line];
        }

        return sum;
    }
}
