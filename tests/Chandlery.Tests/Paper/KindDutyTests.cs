using System.Text.RegularExpressions;
using Chandlery.Core.Assessed;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Core.SafetyFiles.Listings;
using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Paper;

/// <summary>Duties of every place and listings in every language speak of the product as what it is.</summary>
public sealed class KindDutyTests
{
    private static readonly string[] Flameless = ["fig-melts", "dune-reeds", "dune-refill", "sailcloth-spray"];
    private static readonly string[] Burning = ["fig-tin", "breakwater-pillar", "quay-tea-lights", "slipway-torch"];

    // What a candle and its wick are called, by the languages of the listings: common words of each, from memory.
    private static readonly Dictionary<string, string> Candles = new()
    {
        ["en"] = "candle|wick",
        ["de"] = "kerze|docht",
        ["fr"] = "bougie|mèche",
        ["es"] = @"velas?\b|mecha",
        ["it"] = "candel|stoppin",
        ["nl"] = @"kaars|\blont",
        ["pl"] = "świec|knot",
        ["pt"] = @"\bvelas?\b|pavio",
        ["sv"] = @"\bljuset|\blevande ljus|doftljus|\bveke",
        ["da"] = @"\blyset|duftlys|\bvæge",
        ["no"] = @"\blyset|duftlys|\bveke",
    };

    // What belongs to a diffuser, spray or warmer, from memory.
    private static readonly Dictionary<string, string> Others = new()
    {
        ["en"] = @"diffuser|\breeds?\b|\bspray|warmer",
        ["de"] = @"diffus|stäbchen|\bsprüh|duftlampe|stövchen",
        ["fr"] = @"diffuseur|bâtonnet|vaporis|brûle-parfum",
        ["es"] = "difusor|varilla|pulveriz|quemador de esencias",
        ["it"] = "diffusore|bastoncin|spruzz|bruciaessenze",
        ["nl"] = "diffuser|geurstok|spray|sproei",
        ["pl"] = "dyfuzor|patyczk|rozpyl",
        ["pt"] = "difusor|vareta|pulveriz",
        ["sv"] = "diffuser|doftpinn|spray",
        ["da"] = "diffuser|duftpind|spray",
        ["no"] = "diffuser|duftpinn|spray",
    };

    public static TheoryData<string> All() => [.. Flameless, .. Burning];

    private static Regex Foreign(ProductKind kind, string language)
    {
        string wax = kind.State == PhysicalState.Liquid ? $@"|\b{TestLaw.Lawbook.FindLanguage(language)!.Words["wax"]}\b" : "";
        return new Regex(kind.Burns ? Others[language] : Candles[language] + wax, RegexOptions.IgnoreCase);
    }

    // Names are what the maker calls things.
    private static string Own(string text, Assessment a) =>
        new[] { a.Maker.Name, a.Candle.Name, a.Id, a.Vessel.Name, "water spray" }
            .OrderByDescending(n => n.Length)
            .Aggregate(text, (t, name) => t.Replace(name, "", StringComparison.OrdinalIgnoreCase));

    private static void HoldsNothingOf(Regex words, string text, Assessment a, string what)
    {
        Match found = words.Match(Own(text, a));
        Assert.False(found.Success, $"{what} of {a.Id}: {found.Value} in {text}");
    }

    private static IEnumerable<string> Texts(KeptRecord record) =>
        record
            .Sections.SelectMany(s => s.Blocks.SelectMany(Texts).Prepend(s.Title))
            .Concat(record.Lines)
            .Where(t => !t.Contains(".yaml", StringComparison.Ordinal));

    private static IEnumerable<string> Texts(SheetBlock block) =>
        block switch
        {
            SheetText text => [text.Text],
            SheetTable table => table.Rows.SelectMany(r => r).Concat(table.Heads),
            _ => [],
        };

    [Theory]
    [MemberData(nameof(All))]
    public void Duties_of_every_place_speak_of_the_product(string id)
    {
        Assessment a = TestLaw.Demo($"candles/{id}.yaml", "IE");
        using var folder = new MakersFolder();
        var finder = new DutyFinder(folder.Catalogue, TestLaw.Lawbook);
        var words = new Regex($"{Foreign(a.Kind, "en")}{(a.Kind.Burns ? "" : "|burn")}", RegexOptions.IgnoreCase);
        int read = 0;
        foreach (Place place in TestLaw.Lawbook.Places)
        {
            Assessment there = a with { Places = [place] };
            foreach (string text in Texts(DutyRecord.Of(there, finder.Of(there))))
            {
                HoldsNothingOf(words, text, there, $"duties in {place.Name}");
                read++;
            }
        }

        Assert.InRange(read, 200, 100_000);
    }

    [Fact]
    public void What_is_due_of_wicks_and_burning_is_due_of_what_burns_alone()
    {
        using var folder = new MakersFolder();
        var finder = new DutyFinder(folder.Catalogue, TestLaw.Lawbook);
        string[] Duties(string candle, string place)
        {
            Assessment a = TestLaw.Demo($"candles/{candle}.yaml", "IE") with { Places = [TestLaw.Lawbook.FindPlace(place)!] };
            return [.. finder.Of(a).Select(d => d.Duty.Id)];
        }

        Assert.Contains("wick", Duties("fig-tin", "AU"));
        Assert.DoesNotContain("wick", Duties("dune-reeds", "AU"));
        Assert.Contains("injuries", Duties("dune-reeds", "AU"));
        Assert.Contains("no-relighting", Duties("fig-tin", "CA"));
        Assert.DoesNotContain("no-relighting", Duties("fig-melts", "CA"));
        Assert.DoesNotContain("wick", Duties("fig-melts", "NZ"));
        Assert.DoesNotContain("tests", Duties("sailcloth-spray", "US"));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void What_shows_a_duty_done_is_named_as_the_file_is_called(string id)
    {
        using var folder = new MakersFolder();
        Assessment a = folder.Assess(id, "IE");
        DutyLine line = new DutyFinder(folder.Catalogue, TestLaw.Lawbook).Of(a).Single(d => d.Duty.Id == "classification");
        Assert.Equal(a.StopsSale ? DutyState.Open : DutyState.Done, line.State);
        Assert.True(a.StopsSale || File.Exists(line.Shown), line.Shown);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Listings_in_every_language_speak_of_the_product(string id)
    {
        // What the law words is not ours: it says the same of all products.
        ListingPart[] ofTheLaw =
        [
            ListingPart.HazardTypes,
            ListingPart.HazardStatements,
            ListingPart.SupplementalStatements,
            ListingPart.Precautions,
            ListingPart.NamedSubstances,
        ];
        Assessment a = TestLaw.Demo($"candles/{id}.yaml", "IE", new DateOnly(2028, 1, 1));
        Assert.Equal(Candles.Keys.Order(), TestLaw.Lawbook.Safety.Words.Select(w => w.Code).Order());
        Assert.Equal(Candles.Keys.Order(), Others.Keys.Order());
        int read = 0;
        foreach (SafetyWords words in TestLaw.Lawbook.Safety.Words)
        {
            // Norwegian lacks the law's statements so far, and its listing is refused with them.
            Language language = TestLaw.Lawbook.FindLanguage(words.Code)!;
            if (StatementText.Lacking(language, a.Label).Any())
            {
                continue;
            }

            read++;
            Regex foreign = Foreign(a.Kind, words.Code);
            foreach (ListingUse use in Enum.GetValues<ListingUse>())
            {
                ShopListing listing = ListingMaker.Make(a, language, words, TestLaw.Lawbook, use);
                IEnumerable<string> said = listing
                    .Lines.Where(l => !ofTheLaw.Contains(l.Part))
                    .SelectMany(l => l.Texts.Prepend(l.Heading))
                    .Concat(listing.Look);
                Assert.True(use == ListingUse.Advert || said.Count() > 10, $"listing of {id} in {words.Code} says nothing");
                Assert.All(said, text => HoldsNothingOf(foreign, text, a, $"{use}, {words.Code}"));
            }
        }

        Assert.InRange(read, Candles.Count - 1, Candles.Count);
    }
}
