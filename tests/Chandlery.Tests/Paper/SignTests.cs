using Chandlery.Core.Law;
using Chandlery.Paper.Blocks;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Cards;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Symbols;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

/// <summary>No message of burning safety stands without a sign, and every sign can be seen where it is small.</summary>
public sealed class SignTests
{
    // The side of a sign on the smallest card, and the thinnest line that prints safely in one ink (design rule of ours).
    private const double SmallestSideMm = 5;
    private const double ThinnestMm = 0.25;

    private static SymbolSheet Drawings => TestLaw.Shop.Symbols;

    public static TheoryData<string> MessageKeys() => [.. TestLaw.Lawbook.FindLanguage("en")!.Safety.Keys];

    [Theory]
    [MemberData(nameof(MessageKeys))]
    public void Every_message_has_a_sign(string key)
    {
        string sign = SafetyMessages.SignOf(key);
        Assert.True(Drawings.Has(sign), $"'{key}' has no sign");
        Assert.Contains(SymbolName.Needed, n => n.Text == sign);
    }

    [Theory]
    [InlineData("candles/harbour-bowl.yaml", null)]
    [InlineData("candles/slate-jar.yaml", null)]
    [InlineData("candles/fig-tin.yaml", "US")]
    public void Every_message_on_a_card_stands_beside_its_sign(string candle, string? place)
    {
        var facts = new CardFacts(TestLaw.Demo(candle, place), TestLaw.Demo(candle, place).Languages[0], TestLaw.Lawbook.Burning);
        foreach (CardPaper card in PaperList.Own.All.OfType<CardPaper>())
        {
            MarkupDocument document = TestLaw.Shop.Read(card.View(facts), new Problems())!;
            var items = document.Blocks.OfType<Messages>().SelectMany(m => m.Items).ToList();
            Assert.NotEmpty(items);
            Assert.All(items, i => Assert.True(Drawings.Has(i.Symbol), $"{card.Id}: '{i.Text}' has no sign"));
            Assert.Equal(items.Count, items.Select(i => i.Symbol).Distinct().Count());
        }
    }

    [Theory]
    [MemberData(nameof(MessageKeys))]
    public void Lines_of_a_sign_are_thick_enough_where_it_is_small(string key)
    {
        IEnumerable<PathItem> lines = Drawings
            .Place(SafetyMessages.SignOf(key), 0, 0, SmallestSideMm)
            .OfType<PathItem>()
            .Where(p => p.Stroke == Ink.Black);
        Assert.All(lines, l => Assert.True(l.StrokeUnits * l.ScaleMm >= ThinnestMm, key));
    }

    [Theory]
    [InlineData(3, "M50 50 L50 9 A41 41 0 0 1 91 50 Z")]
    [InlineData(6, "M50 50 L50 9 A41 41 0 0 1 50 91 Z")]
    [InlineData(9, "M50 50 L50 9 A41 41 0 1 1 9 50 Z")]
    public void The_dial_shows_the_hours_of_the_text(double hours, string sector)
    {
        SymbolSheet dial = HourDial.On(Drawings, hours);
        Assert.Equal(sector, dial.Place("longestBurn", 0, 0, 5).OfType<PathItem>().First().Path);
    }

    [Fact]
    public void The_three_that_save_lives_are_twice_the_size_of_the_rest()
    {
        foreach (CardPaper card in PaperList.Own.All.OfType<CardPaper>())
        {
            Scene page = TestLaw.Made(card.Id, TestLaw.Demo("candles/harbour-bowl.yaml")).Document.Pages[0];
            IReadOnlyList<string> saving = TestLaw.Lawbook.Kinds.Find(ProductKind.Usual)!.Messages[MessageList.First];
            double[] first = [.. page.Marks.Where(m => saving.Contains(m.Name)).Select(m => m.WidthMm)];
            double[] rest = [.. page.Marks.Where(m => !saving.Contains(m.Name)).Select(m => m.WidthMm)];
            Assert.Equal(saving.Count, first.Length);
            Assert.All(rest, side => Assert.Equal(first[0] / 2, side, 2));
            Assert.All(rest, side => Assert.True(side >= SmallestSideMm, $"{card.Id}: {side} mm"));
        }
    }
}
