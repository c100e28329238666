using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.SafetyFiles;

/// <summary>A recall finds whoever has the candles, and says what it cannot know.</summary>
public sealed class RecallTests
{
    private static RecallResult? Find(MakersFolder folder, RecallBy by, string text) =>
        new RecallFinder(folder.Catalogue).Find(new RecallQuery(by, text));

    [Fact]
    public void By_batch_lot_oil_and_substance_it_finds_the_same_receivers()
    {
        using var folder = new MakersFolder();
        foreach (
            (RecallBy by, string text) in new[]
            {
                (RecallBy.Batch, "HB-2611-02"),
                (RecallBy.Lot, "CS-1107"),
                (RecallBy.Oil, "cedar-smoke"),
                (RecallBy.Substance, "97-53-0"),
            }
        )
        {
            AffectedBatch batch = Assert.Single(Find(folder, by, text)!.Batches);
            Assert.True(batch.IsCertain);
            Assert.Equal((3, 2, 1), (batch.Batch.Made, batch.Dispatched, batch.Left));
            Assert.Equal(["Lantern Nook", "P. Orlane"], batch.Dispatches.Select(d => d.Receiver!.Name));
        }

        Assert.Null(Find(folder, RecallBy.Lot, "no such lot"));
    }

    [Fact]
    public void Other_kinds_than_container_candles_are_found_by_what_is_in_them_too()
    {
        using var folder = new MakersFolder();
        (string Lot, string Batch, string[] Who)[] kinds =
        [
            ("TC-1040", "QT-2611-02", ["The Net Loft"]),
            ("DG-0588", "DR-2611-01", ["Lantern Nook", "T. Quillane"]),
            ("MB-2609", "DR-2611-01", ["Lantern Nook", "T. Quillane"]),
            ("MS-6", "FM-2611-01", ["The Net Loft"]),
        ];
        foreach ((string lot, string code, string[] who) in kinds)
        {
            AffectedBatch batch = Assert.Single(Find(folder, RecallBy.Lot, lot)!.Batches);
            Assert.Equal((code, true), (batch.Batch.Code, batch.IsCertain));
            Assert.Equal(who, batch.Dispatches.Select(d => d.Receiver!.Name));
        }

        // Isoeugenol is in two oils, the soy wax went into three kinds.
        Assert.Equal(
            ["FM-2611-01", "HB-2611-02"],
            Find(folder, RecallBy.Substance, "97-54-1")!.Batches.Select(b => b.Batch.Code).Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            ["FM-2611-01", "HB-2611-02", "QT-2611-02"],
            Find(folder, RecallBy.Lot, "SY-2610")!.Batches.Select(b => b.Batch.Code).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_batch_that_names_no_lot_cannot_be_ruled_out()
    {
        using var folder = new MakersFolder();
        folder.Change("batches/hb-2611.yaml", "lots: [orange-26-09, fog-26-09, cedar-26-10,", "lots: [orange-26-09, fog-26-09,");
        AffectedBatch batch = Assert.Single(Find(folder, RecallBy.Lot, "CS-1107")!.Batches);
        Assert.False(batch.IsCertain);
        folder.Change("lots/cedar-26-10.yaml", "bought: 2026-10-12", "bought: 2026-11-15");
        Assert.Empty(Find(folder, RecallBy.Lot, "CS-1107")!.Batches);
    }

    [Fact]
    public void What_is_not_noted_is_said()
    {
        using var folder = new MakersFolder();
        folder.Change("batches/hb-2611.yaml", "made: 3\n", "");
        Assert.Contains(
            "it is not noted how many were made",
            Find(folder, RecallBy.Batch, "hb-2611")!.Unknown[0],
            StringComparison.Ordinal
        );
        Assert.Contains(
            "Fig Tin: no batch is declared",
            string.Join('\n', Find(folder, RecallBy.Oil, "fig-leaf")!.Unknown),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("Slate Jar", string.Join('\n', Find(folder, RecallBy.Oil, "fig-leaf")!.Unknown), StringComparison.Ordinal);
    }

    [Fact]
    [Outside(
        "Regulation (EU) 2023/988, Art. 36 (the form of a recall notice: headline, action, no words that lessen the risk; single points from memory)"
    )]
    public void The_notice_has_the_form_of_the_law()
    {
        using var folder = new MakersFolder();
        RecallResult recall = Find(folder, RecallBy.Batch, "hb-2611")!;
        NoticeText notice = NoticeText.Of(
            recall.Batches,
            folder.Catalogue.OfKind<Maker>().Single(),
            "The bowl can crack.",
            TestRecalls.Words("en", ProductKind.Usual)
        );
        Assert.Equal("Product safety recall", notice.Title);
        string all = string.Join('\n', notice.Parts.SelectMany(p => p.Texts.Prepend(p.Heading)));
        Assert.Contains("Batch HB-2611-02", all, StringComparison.Ordinal);
        Assert.Contains("DE, IE, from 2026-11-17 to 2026-11-19, by Tarnvey Candle Shed, Lantern Nook", all, StringComparison.Ordinal);
        Assert.Contains("Stop using the candle at once", all, StringComparison.Ordinal);
        Assert.DoesNotContain("Orlane", all, StringComparison.Ordinal);
        RecallRules rules = TestLaw.Lawbook.Safety.Recalls.Find("union")!;
        Assert.Equal(["voluntary", "rare"], rules.Lessening("A voluntary step, in rare cases."));
        Assert.Empty(rules.Lessening(all));
        Assert.Equal(Enum.GetValues<NoticePart>(), rules.Parts.Select(p => p.Part));
    }

    [Fact]
    public void All_that_is_sent_out_is_written_and_a_weak_word_refused()
    {
        using var folder = new MakersFolder();
        string into = Path.Combine(folder.Path, "out");
        (int code, _, string errors) = Recall(folder, "en: As a precaution", into);
        Assert.Equal(2, code);
        Assert.Contains("'precaution' lessens the risk", errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(into));
        (code, _, errors) = Recall(folder, "en: The bowl can crack.", into);
        Assert.Equal(1, code);
        Assert.Contains("harbour-bowl, de: the danger is said in English there", errors, StringComparison.Ordinal);
        Assert.Equal(
            [
                "harbour-bowl-picture.svg",
                "harbour-bowl-recall-letter-hb-2611-lantern.pdf",
                "harbour-bowl-recall-letter-hb-2611-person.pdf",
                "harbour-bowl-recall-notice-de.pdf",
                "harbour-bowl-recall-notice-en.pdf",
                "harbour-bowl-recall-shelf-card-de.pdf",
                "harbour-bowl-recall-shelf-card-en.pdf",
                "harbour-bowl-recall-web-de.html",
                "harbour-bowl-recall-web-en.html",
                "recall-authority-de.pdf",
                "recall-authority.pdf",
                "recall-receivers.csv",
                "recall.json",
            ],
            Directory.GetFiles(into).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    [Outside("Regulation (EU) 2023/988, Art. 36(2)(b): a picture of the product in the recall notice")]
    public void The_notice_shows_the_product_or_else_its_label_and_says_so()
    {
        using var folder = new MakersFolder();
        string into = Path.Combine(folder.Path, "out");
        (string Text, int Drawn, string Errors, string Web) Notice()
        {
            (int code, _, string errors) = Recall(folder, "en: The bowl can crack.", into);
            Assert.Equal(1, code);
            using var reader = new Chandlery.Tests.Paper.PdfReader(
                File.ReadAllBytes(Path.Combine(into, "harbour-bowl-recall-notice-en.pdf"))
            );
            return (
                reader.Text(0),
                reader.Pages[0].Paths.Count,
                errors,
                File.ReadAllText(Path.Combine(into, "harbour-bowl-recall-web-en.html"))
            );
        }

        (string text, int drawn, string errors, string web) = Notice();
        Assert.DoesNotContain("Picture: The label", text, StringComparison.Ordinal);
        Assert.True(drawn > 20, $"{drawn} paths");
        Assert.DoesNotContain("no picture", errors, StringComparison.Ordinal);
        Assert.Contains("<img src=\"harbour-bowl-picture.svg\" alt=\"Harbour Bowl\">", web, StringComparison.Ordinal);
        Assert.Equal(folder.Read("candles/harbour-bowl.svg"), File.ReadAllText(Path.Combine(into, "harbour-bowl-picture.svg")));

        folder.Change("candles/harbour-bowl.yaml", "picture: harbour-bowl.svg\n", "");
        (text, _, errors, web) = Notice();
        Assert.Contains("Picture: The label", text, StringComparison.Ordinal);
        Assert.Contains("HB-2611-02", text, StringComparison.Ordinal);
        Assert.Contains("harbour-bowl: no picture of the product is declared", errors, StringComparison.Ordinal);
        Assert.Contains("<img src=\"harbour-bowl-picture.png\"", web, StringComparison.Ordinal);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], File.ReadAllBytes(Path.Combine(into, "harbour-bowl-picture.png"))[..4]);
    }

    [Fact]
    public void A_picture_that_is_not_there_is_a_problem()
    {
        using var folder = new MakersFolder();
        folder.Change("candles/harbour-bowl.yaml", "picture: harbour-bowl.svg", "picture: bowl.jpg");
        string into = Path.Combine(folder.Path, "out");
        (int code, _, string errors) = Recall(folder, "en: It can crack.", into);
        Assert.Equal(2, code);
        Assert.Contains("There is no file 'bowl.jpg' beside this one.", errors, StringComparison.Ordinal);
        Assert.DoesNotContain("none is declared", errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(into));
        (code, _, errors) = Command.Run("listing", Path.Combine(folder.Path, "candles", "harbour-bowl.yaml"), "--language", "en");
        Assert.Equal(2, code);
        Assert.Contains("There is no file 'bowl.jpg' beside this one.", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_without_words_is_said_once()
    {
        using var folder = new MakersFolder();
        folder.Change("dispatches/hb-2611-lantern.yaml", "country: DE", "country: EE");
        (_, _, string errors) = Recall(folder, "en: The bowl can crack.", Path.Combine(folder.Path, "out"));
        Assert.Equal(2, errors.Split("EE: there are no words for a recall").Length);
    }

    [Fact]
    public void Names_are_taken_out_after_their_time_and_counts_stay()
    {
        using var folder = new MakersFolder();
        (int code, string output, _) = Command.Run("dispatches", "forget", folder.Path, "--as-of", "2031-11-19");
        Assert.Equal(0, code);
        Assert.StartsWith("0 names", output, StringComparison.Ordinal);
        (code, output, _) = Command.Run("dispatches", "forget", folder.Path, "--as-of", "2031-11-22");
        Assert.Equal(0, code);
        Assert.Contains("2 names", output, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "Orlane",
            folder.Read("dispatches/hb-2611-person.yaml") + folder.Read("incidents/bowl-tall-flame.yaml"),
            StringComparison.Ordinal
        );
        Assert.Contains("# Nobody was hurt", folder.Read("incidents/bowl-tall-flame.yaml"), StringComparison.Ordinal);
        AffectedBatch batch = Assert.Single(Find(folder, RecallBy.Batch, "hb-2611")!.Batches);
        Assert.Equal(2, batch.Dispatched);
        Assert.Contains(
            "name was taken out on 2031-11-22",
            string.Join(' ', Find(folder, RecallBy.Batch, "hb-2611")!.Unknown),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_dispatch_of_no_batch_is_a_problem()
    {
        using var folder = new MakersFolder();
        folder.Change("dispatches/hb-2611-person.yaml", "batch: hb-2611", "batch: hb-2612");
        (int code, _, string errors) = Command.Run("dispatches", "list", folder.Path);
        Assert.Equal(2, code);
        Assert.Contains("There is no batch named 'hb-2612'. Did you mean 'hb-2611'?", errors, StringComparison.Ordinal);
    }

    private static (int Code, string Output, string Errors) Recall(MakersFolder folder, string hazard, string into) =>
        Command.Run("recall", folder.Path, "--batch", "hb-2611", "--hazard", hazard, "--out", into);
}
