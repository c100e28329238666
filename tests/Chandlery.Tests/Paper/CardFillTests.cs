using Chandlery.Core.Assessed;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Paper;

/// <summary>Cards fill their page by design: nothing torn, no hole, no empty third.</summary>
public sealed class CardFillTests
{
    // What may stay empty between two things on a card, as a share of its height.
    private const double LargestHole = 0.08;

    // A line that ends in a sign or a dot between two things, or begins with a unit. (In Greek a dot at a word is a semicolon.)
    private const string Torn = @"[(≤≥]$|\s·$|^·|^%|^(cm|mm)\b";

    public static TheoryData<string, string, string> Cards()
    {
        var cards = new TheoryData<string, string, string>();
        foreach (string card in new[] { "burn-card", "pocket-card", "shop-card" })
        {
            foreach (string candle in new[] { "harbour-bowl", "slate-jar", "fig-tin" })
            {
                foreach (string place in new[] { "DE", "FR", "GR", "HU", "IE", "US" })
                {
                    cards.Add(card, candle, place);
                }
            }
        }

        return cards;
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void No_part_of_a_card_is_empty(string card, string candle, string place)
    {
        foreach (Scene page in Pages(card, candle, place))
        {
            List<(double From, double To)> bands =
            [
                .. page.Marks.Select(m => (m.YMm, m.YMm + m.HeightMm)),
                .. page.Items.SelectMany(i => i.All).OfType<TextItem>().Select(t => (t.BaselineMm - t.SizeMm, t.BaselineMm)),
            ];
            double reached = 0;
            foreach ((double from, double to) in bands.OrderBy(b => b.From))
            {
                Assert.True(from - reached <= LargestHole * page.HeightMm, $"{place}: empty from {reached:0} to {from:0} mm");
                reached = Math.Max(reached, to);
            }

            Assert.True(page.HeightMm - reached <= LargestHole * page.HeightMm, $"{place}: empty from {reached:0} mm to the foot");
        }
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void No_line_parts_a_sign_from_its_figure(string card, string candle, string place)
    {
        foreach (Scene page in Pages(card, candle, place))
        {
            // What stands on one line, in one column and one weight after the other.
            string text = "";
            TextItem? last = null;
            foreach (TextItem run in page.Items.SelectMany(i => i.All).OfType<TextItem>())
            {
                bool goesOn =
                    last is not null && Math.Abs(last.BaselineMm - run.BaselineMm) < 0.01 && run.XMm - last.XMm - last.WidthMm < 0.01;
                if (!goesOn)
                {
                    Assert.DoesNotMatch(Torn, text);
                    text = "";
                }

                text += run.Shaped.Text;
                last = run;
            }

            Assert.DoesNotMatch(Torn, text);
        }
    }

    private static IEnumerable<Scene> Pages(string card, string candle, string place)
    {
        Assessment a = TestLaw.Demo($"candles/{candle}.yaml", place);
        return TestLaw.Made(card, a).Document.Pages;
    }
}
