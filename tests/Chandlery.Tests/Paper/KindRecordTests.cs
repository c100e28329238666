using System.Text.RegularExpressions;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.Incidents;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers.Recalls;
using Chandlery.Paper.Papers.Records;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Sheets;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

/// <summary>Papers of a recall and records that the maker keeps speak of the product as what it is.</summary>
public sealed class KindRecordTests
{
    // Candles, lighting, burning, by the languages of the notices: common words of each, from memory. Melts may speak of wax and of burners.
    private static readonly Dictionary<string, string> OfCandles = new()
    {
        ["en"] = "candle|wick|light it|lit |burn",
        ["de"] = "kerze|docht|anzünd|brenn",
        ["fr"] = "bougie|mèche|allum|brûl",
        ["es"] = "velas?\\b|mecha|encend|encien|quemar",
        ["it"] = "candel|stoppin|accend|bruciare",
        ["nl"] = "kaars|lont|steek|branden",
        ["pl"] = "świec|knot|zapal|palen",
        ["pt"] = "velas?\\b|pavio|acend|queimar",
        ["sv"] = "ljus|veke|tänd|bränn",
        ["da"] = "\\blys|væge|tænd|brænd",
        ["no"] = "\\blys|veke|tenn |brenn",
    };

    public static TheoryData<string> Flameless() => ["fig-melts", "dune-reeds", "dune-refill", "sailcloth-spray"];

    private static Regex Foreign(ProductKind kind, string code)
    {
        string wax = kind.State == PhysicalState.Liquid ? $@"|\b{TestLaw.Lawbook.FindLanguage(code)!.Words["wax"]}\b" : "";
        return new Regex(OfCandles[code] + wax, RegexOptions.IgnoreCase);
    }

    // Names are what the maker calls things.
    private static string Own(string text, Assessment a) =>
        new[] { a.Maker.Name, a.Candle.Name, a.Id, a.Vessel.Name }.Aggregate(
            text,
            (t, name) => t.Replace(name, "", StringComparison.OrdinalIgnoreCase)
        );

    private static void HoldsNothingOf(Regex words, string text, Assessment a, string what)
    {
        Assert.True(text.Length > 60, $"{what} of {a.Id} says nothing");
        Match found = words.Match(Own(text, a));
        Assert.False(found.Success, $"{what} of {a.Id}: {found.Value} in {text}");
    }

    private static string Print(PaperDocument? document) => PrintedText.Of(PdfDrawing.Draw(document!));

    private static string Print(KeptRecord record)
    {
        var problems = new Problems();
        string text = Print(RecordDocument.Make(record, TestLaw.Shop, problems));
        Assert.Empty(problems.Found);
        return text;
    }

    private static DeclaredKinds Kinds => new(TestLaw.Lawbook.Kinds);

    private static KeptRecord Authority(params IReadOnlyList<Assessment> of) => Authority("en", of);

    private static KeptRecord Authority(string language, IReadOnlyList<Assessment> of) =>
        new AuthorityRecord(
            new RecallResult(new RecallQuery(RecallBy.Batch, "B-1"), [.. of.Select(TestRecalls.Batch)], []),
            of[0].Maker,
            Kinds,
            TestLaw.Today
        ).Of(
            "It can hurt.",
            [("Ireland", TestLaw.Lawbook.Safety.For(TestLaw.Lawbook.Safety.Recalls, "IE"))],
            TestLaw.Lawbook.Safety.AuthorityWords.Find(language)!
        );

    [Theory]
    [MemberData(nameof(Flameless))]
    public void A_recall_of_what_never_burns_speaks_of_no_candle_in_any_language(string id)
    {
        Assessment a = TestLaw.Demo($"candles/{id}.yaml", "IE");
        AffectedBatch batch = TestRecalls.Batch(a);
        var documents = new RecallDocuments(TestLaw.Shop, new Problems());
        Assert.Equal(OfCandles.Keys.Order(), TestLaw.Lawbook.Safety.Words.Select(w => w.Code).Order());
        foreach (SafetyWords all in TestLaw.Lawbook.Safety.Words)
        {
            RecallWords words = TestRecalls.Words(all.Code, a.Kind.Id);
            Regex foreign = Foreign(a.Kind, all.Code);
            var notice = NoticeText.Of([batch], a.Maker, "...", words);
            string said = string.Join(' ', notice.Parts.SelectMany(p => p.Texts.Prepend(p.Heading)));
            Assert.Contains(TestLaw.Lawbook.FindLanguage(all.Code)!.Words[a.Kind.Called.Scented], said, StringComparison.Ordinal);
            HoldsNothingOf(foreign, said, a, $"notice, {all.Code}");
            HoldsNothingOf(foreign, NoticeWeb.Html(notice), a, $"text for the web, {all.Code}");
            HoldsNothingOf(foreign, Print(documents.Notice(notice)), a, $"printed notice, {all.Code}");
            HoldsNothingOf(foreign, Print(documents.ShelfCard(notice)), a, $"shelf card, {all.Code}");
            foreach (Dispatch to in new[] { batch.Dispatches[0], TestRecalls.ToPerson(batch) })
            {
                HoldsNothingOf(foreign, Print(documents.Letter(notice, to, to.Receiver!, words)), a, $"letter, {all.Code}");
            }
        }
    }

    [Theory]
    [InlineData("fig-melts", "Stop using the wax melt at once and do not warm it again.")]
    [InlineData("dune-reeds", "Stop using the reed diffuser at once and do not use it again.")]
    [InlineData("fig-tin", "Stop using the candle at once and do not light it again.")]
    public void What_to_do_is_said_of_the_kind(string id, string says)
    {
        Assessment a = TestLaw.Demo($"candles/{id}.yaml", "IE");
        Assert.StartsWith(says, TestRecalls.Words("en", a.Kind.Id)["recallStop"], StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Flameless))]
    public void Records_of_what_never_burns_speak_of_no_candle(string id)
    {
        Assessment a = TestLaw.Demo($"candles/{id}.yaml", "IE");
        Regex foreign = Foreign(a.Kind, "en");
        AffectedBatch batch = TestRecalls.Batch(a);
        foreach (SafetyWords words in TestLaw.Lawbook.Safety.AuthorityWords)
        {
            // Reasons stay English in every form, and wax is 'was' in Dutch.
            Regex own = words.Code == "en" ? foreign : new Regex(OfCandles[words.Code], RegexOptions.IgnoreCase);
            HoldsNothingOf(own, Print(Authority(words.Code, [a])), a, $"form for the authority, {words.Code}");
        }

        var incident = new Incident
        {
            Id = "i",
            Place = a.Candle.Place,
            Kind = IncidentKind.Accident,
            Candle = new Reference(a.Id, a.Candle.Place),
            Batch = null,
            Country = "IE",
            Known = TestLaw.Today,
            Happened = "It leaked.",
            Harm = Harm.Injury,
            Found = null,
            Done = [],
            Reported = [],
            Closed = null,
            Person = null,
            Forgotten = null,
        };
        foreach (IncidentRules rules in TestLaw.Lawbook.Safety.Incidents)
        {
            IncidentClock[] clocks = [.. rules.Clocks.Select(c => new IncidentClock(incident, c, TestLaw.Today, null, ClockState.Open))];
            HoldsNothingOf(foreign, Print(ComplaintRecord.Of("M", clocks, TestLaw.Today)), a, "register of complaints");
        }

        var weighing = new Weighing
        {
            Id = "w",
            Place = a.Candle.Place,
            Batch = new Reference("b", a.Candle.Place),
            On = TestLaw.Today,
            By = "M",
            Tare = new Grams(10),
            Gross = [new Grams(100)],
        };
        foreach (QuantityRules rules in TestLaw.Lawbook.Safety.Quantities)
        {
            var verdict = WeighingVerdict.Of(weighing, a.Candle, rules);
            HoldsNothingOf(foreign, Print(WeighingRecord.Of("M", [(verdict, batch.Batch.Code)], rules.Clause)), a, "record of weighings");
        }
    }

    [Fact]
    public void The_form_is_in_the_language_of_the_place_and_says_what_stays_English()
    {
        Assert.Equal(["de", "en", "es", "fr", "it", "nl"], TestLaw.Lawbook.Safety.AuthorityWords.Select(w => w.Code).Order());
        Assessment a = TestLaw.Demo("candles/fig-tin.yaml", "IE");
        string german = Print(Authority("de", [a]));
        Assert.Contains("Meldung eines Rückrufs", german, StringComparison.Ordinal);
        Assert.Contains("Auf Englisch stehen hier", german, StringComparison.Ordinal);
        Assert.Contains("Ausgangspunkt: Charge B-1", german, StringComparison.Ordinal);
        Assert.DoesNotContain("page 1 of", german, StringComparison.Ordinal);
        Assert.Contains("Begun with batch B-1.", Print(Authority(a)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_recall_of_a_candle_and_a_diffuser_speaks_of_products()
    {
        string text = Print(Authority(TestLaw.Demo("candles/fig-tin.yaml", "IE"), TestLaw.Demo("candles/dune-reeds.yaml", "IE")));
        Assert.Contains("where the product was sold", text, StringComparison.Ordinal);
        Assert.Contains("Left products are kept back", text, StringComparison.Ordinal);
    }
}
