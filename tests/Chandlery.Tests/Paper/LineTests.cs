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

    [Fact]
    public void Of_all_ways_that_fit_none_is_more_even()
    {
        List<Piece> pieces = Pieces("Wash hands well after you pour it, and keep it cool, dry and away from small children.");
        for (double width = 7; width < 20; width += 0.37)
        {
            List<int> greedy = Greedy(pieces, width);
            double[] widths = [.. Enumerable.Range(0, greedy.Count).Select(l => width + (l % 3 * 0.5))];
            int[]? found = EvenLines.Break(pieces, widths, 1);
            double best = Ways(pieces, 0, widths, 0, []).Select(way => Raggedness(pieces, way, widths)).DefaultIfEmpty(-1).Min();
            Assert.Equal(best, found is null ? -1 : Raggedness(pieces, found, widths), 9);
        }
    }

    // Every way to set the pieces from one on in the lines that are left, each with at least one piece.
    private static IEnumerable<int[]> Ways(List<Piece> pieces, int at, double[] widths, int line, int[] before)
    {
        if (line == widths.Length)
        {
            return at == pieces.Count ? [before] : [];
        }

        return Enumerable
            .Range(1, Math.Max(0, pieces.Count - at))
            .TakeWhile(count => Used(pieces, at, count) <= widths[line])
            .SelectMany(count => Ways(pieces, at + count, widths, line + 1, [.. before, count]));
    }

    private static double Used(List<Piece> pieces, int at, int count) =>
        pieces.Skip(at).Take(count).Select((p, i) => p.WidthEm + (i > 0 && p.SpaceBefore ? Face.Of(Weight.Regular).BlankWidth : 0)).Sum();

    // As the last line counts too: below a third of its width it looks left over.
    private static double Raggedness(List<Piece> pieces, int[] counts, double[] widths)
    {
        double sum = 0;
        for (int line = 0, at = 0; line < counts.Length; at += counts[line++])
        {
            double filled = Used(pieces, at, counts[line]) / widths[line];
            sum +=
                line < counts.Length - 1 ? (1 - filled) * (1 - filled)
                : filled >= 0.33 ? 0
                : (0.33 - filled) / 0.33 * ((0.33 - filled) / 0.33) * 0.25;
        }

        return sum;
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
