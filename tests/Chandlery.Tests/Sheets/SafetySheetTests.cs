using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Files;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.ProductInformation;
using Chandlery.Paper.Papers.SafetyDataSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Paper.Templates;
using Chandlery.Tests.Paper;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Sheets;

public sealed class SafetySheetTests
{
    /// <summary>Subsections of REACH Annex II, Part B, for a mixture, with their English headings.</summary>
    public static TheoryData<string, string> AnnexII =>
        new()
        {
            { "1.1", "Product identifier" },
            { "1.2", "Relevant identified uses of the substance or mixture and uses advised against" },
            { "1.3", "Details of the supplier of the safety data sheet" },
            { "1.4", "Emergency telephone number" },
            { "2.1", "Classification of the substance or mixture" },
            { "2.2", "Label elements" },
            { "2.3", "Other hazards" },
            { "3.2", "Mixtures" },
            { "4.1", "Description of first aid measures" },
            { "4.2", "Most important symptoms and effects, both acute and delayed" },
            { "4.3", "Indication of any immediate medical attention and special treatment needed" },
            { "5.1", "Extinguishing media" },
            { "5.2", "Special hazards arising from the substance or mixture" },
            { "5.3", "Advice for firefighters" },
            { "6.1", "Personal precautions, protective equipment and emergency procedures" },
            { "6.2", "Environmental precautions" },
            { "6.3", "Methods and material for containment and cleaning up" },
            { "6.4", "Reference to other sections" },
            { "7.1", "Precautions for safe handling" },
            { "7.2", "Conditions for safe storage, including any incompatibilities" },
            { "7.3", "Specific end use(s)" },
            { "8.1", "Control parameters" },
            { "8.2", "Exposure controls" },
            { "9.1", "Information on basic physical and chemical properties" },
            { "9.2", "Other information" },
            { "10.1", "Reactivity" },
            { "10.2", "Chemical stability" },
            { "10.3", "Possibility of hazardous reactions" },
            { "10.4", "Conditions to avoid" },
            { "10.5", "Incompatible materials" },
            { "10.6", "Hazardous decomposition products" },
            { "11.1", "Information on hazard classes as defined in Regulation (EC) No 1272/2008" },
            { "11.2", "Information on other hazards" },
            { "12.1", "Toxicity" },
            { "12.2", "Persistence and degradability" },
            { "12.3", "Bioaccumulative potential" },
            { "12.4", "Mobility in soil" },
            { "12.5", "Results of PBT and vPvB assessment" },
            { "12.6", "Endocrine disrupting properties" },
            { "12.7", "Other adverse effects" },
            { "13.1", "Waste treatment methods" },
            { "14.1", "UN number or ID number" },
            { "14.2", "UN proper shipping name" },
            { "14.3", "Transport hazard class(es)" },
            { "14.4", "Packing group" },
            { "14.5", "Environmental hazards" },
            { "14.6", "Special precautions for user" },
            { "14.7", "Maritime transport in bulk according to IMO instruments" },
            { "15.1", "Safety, health and environmental regulations/legislation specific for the substance or mixture" },
            { "15.2", "Chemical safety assessment" },
        };

    private static readonly Lazy<string> Printed = new(() => PrintedText.Of(Pdf(Sheet("candles/harbour-bowl.yaml"))));

    private static SafetySheet Sheet(string file, string language = "en", string? place = null) =>
        Make(TestLaw.Demo(file, place), language);

    private static SafetySheet Make(Assessment a, string language = "en")
    {
        var problems = new Problems();
        SafetySheet? sheet = SafetySheetMaker.Make(a, TestLaw.Lawbook.FindLanguage(language)!, TestLaw.Lawbook, 3, problems);
        Assert.Empty(problems.Found);
        return sheet!;
    }

    private static byte[] Pdf(SafetySheet sheet)
    {
        var problems = new Problems();
        byte[] pdf = PdfDrawing.Draw(SafetySheetDocument.Make(sheet, TestLaw.Shop, problems)!);
        Assert.Empty(problems.Found);
        return pdf;
    }

    [Theory]
    [MemberData(nameof(AnnexII))]
    [Outside("REACH Annex II, Part B, as replaced by Regulation (EU) 2020/878; headings from memory; read back with poppler's pdftotext")]
    public void Every_subsection_is_printed_with_its_heading_and_something_under_it(string number, string heading)
    {
        Assert.Contains($"{number} {heading}", Printed.Value, StringComparison.Ordinal);
        Assert.NotEmpty(Sheet("candles/harbour-bowl.yaml").Find(number)!.Blocks);
    }

    [Theory]
    [InlineData("candles/harbour-bowl.yaml")]
    [InlineData("candles/fig-tin.yaml")]
    [InlineData("candles/slate-jar.yaml")]
    [Outside("REACH Annex II, Part B: 16 sections in this order, none empty (Annex II, Part A, 0.2.5)")]
    public void All_subsections_are_there_in_order_and_nothing_else(string file)
    {
        SafetySheet sheet = Sheet(file);
        Assert.Equal(Enumerable.Range(1, 16), sheet.Sections.Select(s => s.Number));
        Assert.Equal(AnnexII.Select(row => (string)row[0]), sheet.Sections.Take(15).SelectMany(s => s.Subsections).Select(s => s.Number));
        Assert.All(sheet.Sections.SelectMany(s => s.Subsections), s => Assert.NotEmpty(s.Blocks));
    }

    [Fact]
    [Outside("REACH Annex II, 9.1(a) to (r), as replaced by Regulation (EU) 2020/878; from memory")]
    public void Section_9_has_the_eighteen_properties_in_order()
    {
        string[] properties =
        [
            "Physical state",
            "Colour",
            "Odour",
            "Melting point/freezing point",
            "Boiling point or initial boiling point and boiling range",
            "Flammability",
            "Lower and upper explosion limit",
            "Flash point",
            "Auto-ignition temperature",
            "Decomposition temperature",
            "pH",
            "Kinematic viscosity",
            "Solubility",
            "Partition coefficient n-octanol/water (log value)",
            "Vapour pressure",
            "Density and/or relative density",
            "Relative vapour density",
            "Particle characteristics",
        ];
        var table = (SheetTable)Sheet("candles/harbour-bowl.yaml").Find("9.1")!.Blocks[0];
        Assert.Equal(properties, table.Rows.Select(r => r[0]));
        Assert.All(table.Rows, r => Assert.NotEqual("", r[1]));
    }

    [Theory]
    [InlineData("US")]
    [InlineData("ZA")]
    [Outside(
        "GHS Table 1.5.2 and 29 CFR 1910.1200, Appendix D: 16 sections; no endocrine, PBT or chemical safety subsections; from memory"
    )]
    public void Other_formats_leave_out_what_only_the_european_one_has(string place)
    {
        SafetySheet sheet = Sheet("candles/fig-tin.yaml", "en", place);
        Assert.Equal(16, sheet.Sections.Count);
        Assert.DoesNotContain(sheet.Sections.SelectMany(s => s.Subsections), s => s.Number is "11.2" or "12.5" or "12.6" or "15.2");
        Assert.Equal("Identification", sheet.Sections[0].Title);
        Assert.Equal("First-aid measures", sheet.Sections[3].Title);
    }

    [Theory]
    [InlineData("de", "Mögliche Gefahren", "Kann allergische Hautreaktionen verursachen.")]
    [InlineData("fr", "Identification des dangers", "Peut provoquer une allergie cutanée.")]
    [InlineData("es", "Identificación de los peligros", "Puede provocar una reacción alérgica en la piel.")]
    [InlineData("it", "Identificazione dei pericoli", "Può provocare una reazione allergica cutanea.")]
    [InlineData("el", "Προσδιορισμός επικινδυνότητας", "Μπορεί να προκαλέσει αλλεργική δερματική αντίδραση.")]
    [Outside("REACH Annex II headings and CLP Annex III statement H317 in these languages; from memory")]
    public void Headings_and_statements_are_in_the_language(string language, string heading, string statement)
    {
        SafetySheet sheet = Make(TestLaw.Demo("candles/harbour-bowl.yaml"), language);
        Assert.Equal(heading, sheet.Sections[1].Title);
        Assert.Contains(sheet.Find("2.2")!.Blocks.OfType<SheetTable>().SelectMany(t => t.Rows), r => r[1] == statement);
    }

    [Fact]
    public void Free_text_without_a_translation_is_english_with_a_warning()
    {
        SafetySheet sheet = Make(TestLaw.Demo("candles/harbour-bowl.yaml"), "el");
        Assert.Contains(sheet.Warnings, w => w.Contains("free text is English", StringComparison.Ordinal));
        Assert.Contains("free text is English", PrintedText.Of(Pdf(sheet)), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_language_has_every_heading()
    {
        IReadOnlyList<string> numbers = [.. TestLaw.Lawbook.SheetWords.Single(w => w.Code == "en").Headings.Keys];
        Assert.Equal(
            TestLaw.Lawbook.Languages.Where(l => l.Official.Count > 0).Select(l => l.Code).Order(),
            TestLaw.Lawbook.SheetWords.Select(w => w.Code).Order()
        );
        Assert.All(TestLaw.Lawbook.SheetWords, w => Assert.Equal(numbers, w.Headings.Keys));
        Assert.All(TestLaw.Lawbook.SheetWords.SelectMany(w => w.Headings.Values.Concat(w.Words.Values)), text => Assert.NotEqual("", text));
    }

    private static SheetDutyFinding Duty(params Ingredient[] lines)
    {
        Composition composition = TestLaw.Mixture(lines);
        IReadOnlyList<Substance> substances = TestLaw.Substances(composition);
        return SheetDuties.Find(TestLaw.Eu.SafetySheet, TestLaw.Law().Judge(composition).Classification, substances);
    }

    [Theory]
    [InlineData("Skin Sens. 1B, H317", 1.0, SheetDuty.WithDelivery)]
    [InlineData("Skin Sens. 1B, H317", 0.1, SheetDuty.OnRequest)]
    [InlineData("Skin Sens. 1B, H317", 0.099, SheetDuty.NotDue)]
    [InlineData("Skin Sens. 1A, H317", 0.1, SheetDuty.WithDelivery)]
    [InlineData("Skin Sens. 1A, H317", 0.01, SheetDuty.OnRequest)]
    [InlineData("Skin Sens. 1A, H317", 0.0099, SheetDuty.NotDue)]
    [InlineData("Skin Irrit. 2, H315", 10.0, SheetDuty.WithDelivery)]
    [InlineData("Skin Irrit. 2, H315", 1.0, SheetDuty.OnRequest)]
    [InlineData("Skin Irrit. 2, H315", 0.99, SheetDuty.NotDue)]
    [InlineData("Carc. 2, H351", 1.0, SheetDuty.WithDelivery)]
    [InlineData("Carc. 2, H351", 0.1, SheetDuty.OnRequest)]
    [InlineData("Carc. 2, H351", 0.09, SheetDuty.NotDue)]
    [InlineData("Repr. 2, H361", 0.1, SheetDuty.OnRequest)]
    [InlineData("Aquatic Chronic 3, H412", 1.0, SheetDuty.OnRequest)]
    [InlineData("Aquatic Chronic 3, H412", 0.9, SheetDuty.NotDue)]
    [InlineData("Flam. Liq. 3, H226", 5.0, SheetDuty.NotDue)]
    [Outside("REACH Art. 31(1) and 31(3); CLP Annex I, Table 3.4.6 note 1 and Annex II, 2.10 (law text)")]
    public void A_sheet_is_due_as_the_law_says(string classText, double percent, SheetDuty duty) =>
        Assert.Equal(duty, Duty(TestLaw.Line("x", percent, [classText])).Duty);

    [Fact]
    [Outside("CLP Annex I, Table 3.4.6, note 1: a tenth of the specific limit")]
    public void A_tenth_of_a_specific_limit_counts()
    {
        Ingredient line = TestLaw.Line("x", 0.0012, ["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.01"]);
        Assert.Equal(SheetDuty.OnRequest, Duty(line).Duty);
    }

    [Fact]
    [Outside("CLP Annex II, 2.10: EUH210 only on mixtures that are not meant for the public")]
    public void EUH210_never_stands_on_a_consumer_candle()
    {
        SheetDutyFinding duty = Duty(TestLaw.Line("x", 0.5, ["Skin Sens. 1B, H317"]));
        Assert.Contains(
            duty.Reasons,
            r =>
                r.Says.StartsWith("EUH210 does not go", StringComparison.Ordinal)
                && r.Clause.Text.Contains("2.10", StringComparison.Ordinal)
        );
    }

    private static SheetTransport Transport(double grams, params Ingredient[] lines)
    {
        Composition composition = TestLaw.Mixture(lines);
        return SheetTransport.Of(
            TestLaw.Eu.SafetySheet.Transport,
            TestLaw.Law(TestLaw.Lawbook.Edition("un-ghs")).Judge(composition).Classification,
            PhysicalState.Solid,
            new Grams(grams),
            volume: null
        );
    }

    /// <summary>The sheet of a demo candle as if it were this mixture.</summary>
    private static SafetySheet SheetOf(double grams, string place, params Ingredient[] lines)
    {
        Assessment demo = TestLaw.Demo("candles/fig-tin.yaml", place);
        Verdict verdict = TestLaw.Law(demo.Edition).Judge(TestLaw.Mixture(lines));
        return Make(demo with { Candle = demo.Candle with { NetMass = new Grams(grams) }, Verdict = verdict });
    }

    private static string Said(SafetySheet sheet, string subsection) =>
        string.Join('\n', sheet.Find(subsection)!.Blocks.OfType<SheetText>().Select(t => t.Text));

    [Fact]
    [Outside("ADR 2.2.9.1.10, 3.2 Table A (UN 3077), special provisions 274 and 375; IMDG Code 2.10.2.7; from memory")]
    public void A_candle_toxic_to_water_life_is_UN_3077_and_free_in_small_packages()
    {
        Ingredient musk = TestLaw.Line("Musk", 30, ["Aquatic Chronic 2, H411"]);
        SafetySheet small = SheetOf(300, "IE", musk);
        Assert.StartsWith("UN 3077", Said(small, "14.1"), StringComparison.Ordinal);
        Assert.Equal("ENVIRONMENTALLY HAZARDOUS SUBSTANCE, SOLID, N.O.S. (contains Musk)", Said(small, "14.2"));
        Assert.Equal(("9", "III"), (Said(small, "14.3"), Said(small, "14.4")));
        Assert.Contains("375", Said(small, "14.6"), StringComparison.Ordinal);
        Assert.Contains("no other provision applies", Said(small, "14.6"), StringComparison.Ordinal);
        string large = Said(SheetOf(5001, "IE", musk), "14.6");
        Assert.Contains("travel as dangerous goods", large, StringComparison.Ordinal);
        Assert.DoesNotContain("no other provision applies", large, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("IE", "2.2")]
    [InlineData("GB", "2.2")]
    [InlineData("UN", "2.2")]
    [InlineData("US", "2.1")]
    [Outside(
        "CLP Annex I, 3.1.3.6.2.2 and GHS 3.1.3.6.2.2: the statement stands on label and safety data sheet; 29 CFR 1910.1200, Appendix D, 2(d): section 2; from memory"
    )]
    public void Ingredients_of_unknown_acute_toxicity_are_told_in_sections_2_and_11(string place, string subsection)
    {
        Assessment demo = TestLaw.Demo("candles/fig-tin.yaml", place);
        Composition unknown = TestLaw.Mixture(TestLaw.Line("Nobody's musk", 10, []) with { Claims = null });
        SafetySheet sheet = Make(demo with { Verdict = TestLaw.Law(demo.Edition).Judge(unknown) });
        const string said = "10 percent of the mixture consists of ingredient(s) of unknown acute toxicity.";
        Assert.Contains(said, Said(sheet, subsection), StringComparison.Ordinal);
        Assert.Contains(said, Said(sheet, "11.1"), StringComparison.Ordinal);
        Assert.DoesNotContain(
            "unknown acute toxicity",
            PrintedText.Of(Pdf(Sheet("candles/fig-tin.yaml", "en", place))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Criteria_that_are_not_met_are_told_once_with_every_class_and_clause()
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        SafetySheet sheet = Make(a);
        Assert.Equal(2, Printed.Value.Split("the criteria of these classes are not met").Length - 1);
        List<ClassRule> notMet = [.. a.Verdict.Law.Rules.Where(r => a.Verdict.ResultOf(r) is null)];
        Assert.NotEmpty(notMet);
        List<IReadOnlyList<string>> rows =
        [
            .. new[] { "11.1", "12.1" }.SelectMany(n => sheet.Find(n)!.Blocks.OfType<SheetTable>()).SelectMany(t => t.Rows),
        ];
        Assert.All(
            notMet,
            rule => Assert.Single(rows, r => r.Count == 2 && r[0].Split("; ").Contains(rule.Group) && r[1] == rule.Clause.Text)
        );
        Assert.DoesNotContain(rows, r => r.Count == 2 && a.Classification.Classes.Any(c => r[0].Split("; ").Contains(c.Rule.Group)));
    }

    [Theory]
    [InlineData("Aquatic Chronic 3, H412", 90, false)]
    [InlineData("Aquatic Chronic 4, H413", 90, false)]
    [InlineData("Aquatic Acute 1, H400", 25, true)]
    [InlineData("Aquatic Acute 1, H400", 24, false)]
    [InlineData("Aquatic Chronic 1, H410", 2.5, true)]
    [InlineData("Skin Sens. 1, H317", 5, false)]
    [Outside("UN Model Regulations 2.9.3.3.1: Acute 1, Chronic 1 or Chronic 2; CLP Annex I, Table 4.1.1 and 4.1.2; from memory")]
    public void Only_three_aquatic_classes_make_dangerous_goods(string classText, double percent, bool dangerous) =>
        Assert.Equal(dangerous, Transport(200, TestLaw.Line("x", percent, [classText], m: 1)).IsDangerousGoods);

    [Fact]
    public void Without_an_emergency_number_there_is_no_sheet()
    {
        Assessment a = TestLaw.Demo("candles/fig-tin.yaml");
        var problems = new Problems();
        Assessment without = a with { Maker = a.Maker with { EmergencyTelephone = null } };
        Assert.Null(SafetySheetMaker.Make(without, TestLaw.Lawbook.FindLanguage("en")!, TestLaw.Lawbook, 1, problems));
        Assert.Contains("1.4", problems.Found[0].What, StringComparison.Ordinal);
    }

    [Fact]
    public void Unknown_is_said_and_never_turned_into_harmless()
    {
        SafetySheet sheet = Sheet("candles/harbour-bowl.yaml");
        Assert.Contains(
            sheet.Find("3.2")!.Blocks.OfType<SheetText>(),
            t => t.Text.Contains("not assessed: up to 1.8", StringComparison.Ordinal)
        );
        Assert.Contains("is unknown and may change this", Said(sheet, "11.1"), StringComparison.Ordinal);
        Assert.Contains("is unknown and may change this", Said(sheet, "12.1"), StringComparison.Ordinal);
    }

    [Fact]
    public void Pages_count_themselves()
    {
        string text = Printed.Value;
        string count = System.Text.RegularExpressions.Regex.Match(text, "Page 1 of ([0-9]+)").Groups[1].Value;
        Assert.InRange(int.Parse(count, System.Globalization.CultureInfo.InvariantCulture), 5, 8);
        Assert.Contains($"Page {count} of {count}", text, StringComparison.Ordinal);
        Assert.Contains("Revision date: 2026-11-25 (3)", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("candles/harbour-bowl.yaml", "en")]
    [InlineData("candles/harbour-bowl.yaml", "de")]
    [InlineData("candles/harbour-bowl.yaml", "fr")]
    [InlineData("candles/fig-tin.yaml", "en")]
    [InlineData("candles/slate-jar.yaml", "en")]
    public void Our_own_reader_gives_back_what_the_sheet_prints(string file, string language)
    {
        Assessment a = TestLaw.Demo(file);
        byte[] pdf = Pdf(Make(a, language));
        IReadOnlyList<SheetPage> pages = PdfWords.Parse(pdf).Value;
        var problems = new Problems();
        OilDraft draft = DraftMaker.Make(
            [new SupplierPdf("own.pdf", pdf, pages)],
            ShippedFiles.Data(null, problems),
            TestLaw.Lawbook.Vocabulary,
            problems
        )!;
        Assert.Empty(problems.Found);

        IReadOnlyList<Substance> named = SheetDuties.Named(a.Edition.SafetySheet, a.Substances);
        Assert.Equal(named.Count, draft.Ingredients.Count);
        foreach (Substance s in named)
        {
            DraftIngredient row = draft.Ingredients.Single(i => i.Cas!.Value == s.Ingredient.Identity.Cas!.Text);
            Assert.Equal(s.Name, row.Name.Value);
            Assert.Equal(s.Ingredient.Identity.Ec?.Text, row.Ec?.Value);
            double high = DeclaredRange.Parse(row.Share!.Value).Value.High.Value;
            Assert.InRange(high, s.Ingredient.WholeHigh.Value * (1 - 1e-9), s.Ingredient.WholeHigh.Value * 1.01);
            Assert.Equal(
                s.Hazards.Select(h => $"{h.Category.ClassCode} {h.Category.Category}, {h.Statement}").Order(),
                row.Classes!.Value.Order()
            );
        }

        if (a.Classification.Classes.Count > 0)
        {
            Assert.Equal(
                a.Classification.Classes.Select(c => $"{c.Category.ClassCode} {c.Category.Category}, {c.Statement}").Order(),
                draft.Classes!.Value.Order()
            );
        }
    }

    [Theory]
    [InlineData("candles/harbour-bowl.yaml")]
    [InlineData("candles/fig-tin.yaml")]
    [InlineData("candles/slate-jar.yaml")]
    public void Product_information_is_one_page_of_the_same_model(string file)
    {
        var problems = new Problems();
        SafetySheet sheet = Sheet(file);
        Assert.Single(ProductInformationDocument.Make(sheet, TestLaw.Shop, problems)!.Pages);
        Assert.Empty(problems.Found);
    }

    [Fact]
    public void Product_information_that_is_too_long_flows_to_another_page()
    {
        const string large = "x-height=\"1.6\" smallest-x-height=\"1.1\"";
        Dictionary<string, string> templates = new(ShippedFiles.Templates(null, new Problems()));
        templates["product-information.sbn"] = templates["product-information.sbn"]
            .Replace(large, "x-height=\"3.2\" smallest-x-height=\"3.2\"", StringComparison.Ordinal);
        var problems = new Problems();
        SafetySheet sheet = Sheet("candles/harbour-bowl.yaml");
        var shop = new PaperShop(new TemplateShelf(templates), TestLaw.Shop.Symbols);
        PaperDocument document = ProductInformationDocument.Make(sheet, shop, problems)!;
        Assert.Empty(problems.Found);
        using var pdf = new PdfReader(PdfDrawing.Draw(document));
        Assert.InRange(pdf.Pages.Count, 2, 5);
        Assert.Contains($"Page 1 of {pdf.Pages.Count}", pdf.Text(0), StringComparison.Ordinal);

        // Nothing is lost on the way: the last page ends with the last text, as the single page does.
        string last = Said(sheet, "13.1").Split('\n')[^1];
        Assert.Contains(last[^30..], pdf.Text(pdf.Pages.Count - 1), StringComparison.Ordinal);
    }
}
