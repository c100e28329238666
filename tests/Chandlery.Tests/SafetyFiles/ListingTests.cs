using Chandlery.Core.Assessed;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Listings;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.SafetyFiles;

/// <summary>What a shop and an advertisement must show, by date.</summary>
public sealed class ListingTests
{
    private const string Sentence = "Always follow the information on the product label.";
    private static readonly DateOnly LastOld = new(2027, 12, 31);

    private static ShopListing Make(string candle, ListingUse use, DateOnly? day = null, string language = "en")
    {
        Assessment a = TestLaw.Demo(candle, "IE", day);
        return ListingMaker.Make(
            a,
            TestLaw.Lawbook.FindLanguage(language)!,
            TestLaw.Lawbook.Safety.Words.Find(language)!,
            TestLaw.Lawbook,
            use
        );
    }

    private static IReadOnlyList<string> Texts(ShopListing listing, ListingPart part) =>
        listing.Lines.FirstOrDefault(l => l.Part == part)?.Texts ?? [];

    [Fact]
    [Outside(
        "CLP Art. 48, as replaced by Regulation (EU) 2024/2865, from 1 January 2028 (Regulation (EU) 2025/2439, Art. 1): the sentence, pictograms, signal word, H and EUH"
    )]
    public void The_advertisement_changes_on_its_day()
    {
        ShopListing before = Make("candles/harbour-bowl.yaml", ListingUse.Advert, LastOld);
        Assert.Equal([ListingPart.HazardTypes], before.Lines.Select(l => l.Part));
        ShopListing after = Make("candles/harbour-bowl.yaml", ListingUse.Advert, LastOld.AddDays(1));
        Assert.Equal(
            [ListingPart.Pictograms, ListingPart.SignalWord, ListingPart.HazardStatements, ListingPart.LabelNotice],
            after.Lines.Select(l => l.Part)
        );
        Assert.Equal([Sentence], Texts(after, ListingPart.LabelNotice));
        Assert.Empty(Make("candles/slate-jar.yaml", ListingUse.Advert, LastOld.AddDays(1)).Lines);
    }

    [Fact]
    [Outside(
        "Regulation (EU) 2023/988, Art. 19: maker with postal and electronic address, identification, warnings, since 13 December 2024"
    )]
    public void An_offer_names_maker_product_and_warnings()
    {
        ShopListing listing = Make("candles/fig-tin.yaml", ListingUse.Shop);
        Assert.Equal(
            ["Tarnvey Candle Shed", "3 Kelp Lane, Port Aldrin, Isle of Tarnvey", "shed@tarnvey.example"],
            Texts(listing, ListingPart.Maker)
        );
        Assert.Contains("Batch FT-2611-04", Texts(listing, ListingPart.Identifier));
        Assert.Contains(Texts(listing, ListingPart.SupplementalStatements), t => t.StartsWith("Contains", StringComparison.Ordinal));
        Assert.Contains("Never leave a burning candle unattended.", Texts(listing, ListingPart.SafetyInformation));
        Assert.All(listing.Lines, l => Assert.False(l.Clause.IsNone));
        Assert.DoesNotContain(
            Make("candles/fig-tin.yaml", ListingUse.Shop, new DateOnly(2024, 12, 12)).Lines,
            l => l.Part == ListingPart.Maker
        );
    }

    [Fact]
    [Outside("Regulation (EU) 2023/988, Art. 19(c): a picture of the product in an offer at a distance (the letter from memory)")]
    public void An_offer_names_the_declared_picture_or_else_the_label()
    {
        ShopListing bowl = Make("candles/harbour-bowl.yaml", ListingUse.Shop);
        Assert.Equal(["harbour-bowl.svg"], Texts(bowl, ListingPart.Picture));
        ShopListing tin = Make("candles/fig-tin.yaml", ListingUse.Shop);
        Assert.Equal(["fig-tin-label.png"], Texts(tin, ListingPart.Picture));
        Assert.Contains(tin.Look, l => l.StartsWith("No picture of the candle is declared", StringComparison.Ordinal));
    }

    [Fact]
    public void Each_language_speaks_its_own_words()
    {
        ShopListing german = Make("candles/harbour-bowl.yaml", ListingUse.Shop, language: "de");
        Assert.Equal(["Ausrufezeichen"], Texts(german, ListingPart.Pictograms));
        Assert.Equal(["Achtung"], Texts(german, ListingPart.SignalWord));
        Assert.Contains(
            "<article itemscope itemtype=\"https://schema.org/Product\" lang=\"de\">",
            ListingWriter.Html(german),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Names_cannot_smuggle_markup_into_the_shop()
    {
        using var folder = new MakersFolder();
        folder.Change("candles/fig-tin.yaml", "name: Fig Tin", "name: Fig <b>Tin</b> & \"Co\"");
        Assessment a = folder.Assess("fig-tin", "IE");
        string html = ListingWriter.Html(
            ListingMaker.Make(a, a.Languages[0], TestLaw.Lawbook.Safety.Words.Find("en")!, TestLaw.Lawbook, ListingUse.Shop)
        );
        Assert.Contains("Fig &lt;b&gt;Tin&lt;/b&gt; &amp; &quot;Co&quot;", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void What_may_not_be_sold_and_places_without_a_rule_are_refused()
    {
        string stopped = Path.Combine(TestLaw.StoppedFolder, "candles", "storm-jar.yaml");
        (int code, string output, string errors) = Command.Run("listing", stopped);
        Assert.Equal((1, ""), (code, output));
        Assert.Contains("something stops the sale", errors, StringComparison.Ordinal);
        (code, output, errors) = Command.Run("listing", Path.Combine(TestLaw.DemoFolder, "candles", "fig-tin.yaml"), "--place", "US");
        Assert.Equal((1, ""), (code, output));
        Assert.Contains("no rule on listings is known for United States", errors, StringComparison.Ordinal);
        (code, _, errors) = Command.Run("listing", Path.Combine(TestLaw.DemoFolder, "candles", "fig-tin.yaml"), "--language", "fr");
        Assert.Equal(1, code);
        Assert.Contains("no language of its label there: en", errors, StringComparison.Ordinal);
    }
}
