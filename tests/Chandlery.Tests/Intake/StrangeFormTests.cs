using Chandlery.Intake;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Paper.Scenes;
using Chandlery.Sheets.Wild;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Intake;

/// <summary>Forms of compositions that the random corpus did not have at first, each on the smallest sheet that shows it.</summary>
public sealed class StrangeFormTests
{
    private const float LineMm = 4;
    private static readonly string[] Heads = ["Chemical name", "CAS No.", "Conc. (%)", "Classification"];
    private static readonly SheetForm Paper = new(210, 297, 15, 8, 1, false, "", "");

    [Fact]
    public void A_number_ends_where_the_next_number_begins_right_behind_it()
    {
        byte[] pdf = Print([
            [(20, "204-633-501-2119400000-10-0000123-51-3")],
            [(20, "78-70-6201-134-4")],
            [(20, "601-012-00-9")],
        ]);
        Assert.Equal(
            ["204-633-5", "01-2119400000-10-0000", "123-51-3", "78-70-6", "201-134-4", "601-012-00-9"],
            PdfWords.Parse(pdf).Value[0].Words.Select(w => w.Text)
        );
    }

    [Fact]
    public void A_word_that_fills_its_line_goes_on_in_the_next()
    {
        DraftIngredient row = Sheet([
            [(20, "Name"), (52, "CAS No."), (82, "Conc. (%)"), (110, "Classification")],
            [(20, "2-(2-Butoxyethoxy)ethan"), (52, "112-34-5"), (82, "1 - 5"), (110, "Eye Irrit. 2, H319")],
            [(20, "ol")],
            [(20, "Benzyl"), (52, "118-58-1"), (82, "1 - 5"), (110, "Skin Sens. 1B, H317")],
            [(20, "salicylate")],
        ]).Ingredients[0];
        Assert.Equal("2-(2-Butoxyethoxy)ethanol", row.Name.Value);
        Assert.NotEmpty(row.Name.Doubts);
    }

    [Fact]
    public void A_hyphen_and_a_figure_at_a_lines_start_go_on_with_the_name()
    {
        DraftIngredient row = Sheet([
            [(20, "Name"), (52, "CAS No."), (82, "Conc. (%)"), (110, "Classification")],
            [(20, "5-Methylheptan"), (52, "541-85-5"), (82, "1 - 5"), (110, "Eye Irrit. 2, H319")],
            [(20, "-3-one")],
            [(20, "Linalool"), (52, "78-70-6"), (82, "1 - 5"), (110, "Skin Sens. 1B, H317")],
        ]).Ingredients[0];
        Assert.Equal("5-Methylheptan-3-one", row.Name.Value);
    }

    [Fact]
    public void A_name_too_long_for_its_column_stays_in_it()
    {
        DraftIngredient row = Sheet([
            [(20, "Name"), (61, "Classification"), (120, "Conc. (%)"), (150, "CAS No.")],
            [(20, "Linalool"), (61, "Skin Sens. 1B, H317"), (120, "1 - 5"), (150, "78-70-6")],
            [(20, "2-(4-tert-"), (61, "Repr. 1B, H360Fd"), (120, "1 - 5"), (150, "80-54-6")],
            [(20, "Butylbenzyl)propionaldehydes")],
            [(20, "Citral"), (61, "Skin Sens. 1, H317"), (120, "1 - 5"), (150, "5392-40-5")],
        ]).Ingredients[1];
        Assert.Equal("2-(4-tert-Butylbenzyl)propionaldehydes", row.Name.Value);
    }

    [Fact]
    public void Headings_that_stand_as_close_as_words_are_headings()
    {
        OilDraft draft = Sheet([
            [(20, "CAS number"), (40, "Content (% w/w)"), (65, "Substance")],
            [(20, "78-70-6"), (40, "3 - 5 %"), (65, "Linalool")],
            [(20, "5392-40-5"), (40, "1 - 3 %"), (65, "Citral")],
        ]);
        Assert.Equal(["Linalool", "Citral"], draft.Ingredients.Select(i => i.Name.Value));
        Assert.DoesNotContain(draft.Ingredients.SelectMany(i => i.Doubts), d => d.Contains("no heading", StringComparison.Ordinal));
    }

    [Fact]
    public void Typed_bars_and_hyphens_part_columns_and_rows()
    {
        (float, string)[] Typed(params string[] cells) =>
            [.. cells.SelectMany((c, at) => new (float, string)[] { (20 + (38 * at), "|"), (22 + (38 * at), c) }).Append((172, "|"))];
        (float, string)[] level = [(20, "+" + string.Join('+', Enumerable.Repeat(new string('-', 38), 4)) + "+")];
        OilDraft draft = Sheet([
            level,
            Typed(Heads),
            level,
            Typed("Linalool", "78-70-6", "10 - 25", "Skin Irrit. 2, H315"),
            Typed("", "", "", "Skin Sens. 1B, H317"),
            level,
            Typed("Citral", "5392-40-5", "1 - < 5", "Skin Sens. 1, H317"),
            level,
        ]);
        Assert.Equal(["Linalool 10 - 25 % 2", "Citral 1 - < 5 % 1"], draft.Ingredients.Select(Told));
        Assert.All(draft.Ingredients, i => Assert.Empty(i.Doubts));
    }

    [Fact]
    public void Labelled_blocks_stand_side_by_side()
    {
        OilDraft draft = Sheet([
            [(20, "Linalool"), (110, "Citral")],
            [(20, "CAS: 78-70-6"), (110, "CAS: 5392-40-5")],
            [(20, "Concentration: 10 - 25 %"), (110, "Concentration: 1 - < 5 %")],
            [(20, "Classification: Skin Irrit. 2, H315;"), (110, "Classification: Skin Sens. 1, H317")],
            [(20, "Skin Sens. 1B, H317")],
            [(20, "Coumarin"), (110, "Eugenol")],
            [(20, "CAS: 91-64-5"), (110, "CAS: 97-53-0")],
            [(20, "Concentration: 0.5 %"), (110, "Concentration: < 1 %")],
            [(20, "Classification: Acute Tox. 4, H302"), (110, "Classification: Skin Sens. 1B, H317")],
            [(20, "For the full text of H-statements see section 16.")],
        ]);
        Assert.Equal(["Linalool 10 - 25 % 2", "Coumarin 0.5 % 1", "Citral 1 - < 5 % 1", "Eugenol < 1 % 1"], draft.Ingredients.Select(Told));
        Assert.All(draft.Ingredients, i => Assert.Empty(i.Doubts));
    }

    [Fact]
    public void A_name_of_two_lines_above_its_labels_is_whole()
    {
        OilDraft draft = Sheet([
            [(20, "Linalool"), (110, "2-(4-tert-Butylbenzyl)")],
            [(110, "propionaldehyde (BMHCA)")],
            [(20, "CAS: 78-70-6"), (110, "CAS: 80-54-6")],
            [(20, "Concentration: 10 - 25 %"), (110, "Concentration: 1 - < 5 %")],
            [(20, "Classification: Skin Sens. 1B, H317"), (110, "Classification: Repr. 1B, H360FD")],
        ]);
        Assert.Contains("2-(4-tert-Butylbenzyl) propionaldehyde (BMHCA)", draft.Ingredients.Select(i => i.Name.Value));
        Assert.Equal(2, draft.Ingredients.Count);
    }

    [Fact]
    public void A_factor_above_a_name_without_a_label_stays_with_its_row()
    {
        OilDraft draft = Sheet([
            [(20, "Hexamethylindanopyran"), (110, "Linalool")],
            [(20, "CAS: 1222-05-5"), (110, "CAS: 78-70-6")],
            [(20, "Concentration: 1 - 5 %"), (110, "Concentration: 1 - < 5 %")],
            [(20, "Classification: Aquatic Acute 1, H400"), (110, "Classification: Skin Sens. 1B, H317")],
            [(20, "M-factor (acute) = 100")],
            [(20, "Decanoic acid")],
            [(20, "CAS: 334-48-5")],
            [(20, "Concentration: 1 - 5 %")],
            [(20, "Classification: Eye Irrit. 2, H319")],
        ]);
        Assert.Equal(100, draft.Ingredients[0].M!.Value.Acute);
        Assert.Equal("Decanoic acid", draft.Ingredients[1].Name.Value);
    }

    [Fact]
    public void A_bound_right_behind_another_heading_heads_its_column()
    {
        OilDraft draft = Sheet([
            [(20, "Substance"), (58, "CAS"), (65, "max. %"), (85, "min. %"), (110, "Classification")],
            [(20, "Linalool"), (52, "78-70-6"), (68, "5"), (85, "1"), (110, "Skin Sens. 1B, H317")],
            [(20, "Citral"), (50, "5392-40-5"), (68, "2"), (85, "1"), (110, "Skin Sens. 1, H317")],
        ]);
        Assert.Equal(["Linalool 1 - 5 % 1", "Citral 1 - 2 % 1"], draft.Ingredients.Select(Told));
    }

    [Fact]
    public void A_table_may_stand_on_its_side()
    {
        OilDraft draft = Sheet([
            [(20, "Chemical name"), (60, "Linalool"), (100, "Citral"), (140, "Coumarin")],
            [(20, "CAS No."), (60, "78-70-6"), (100, "5392-40-5"), (140, "91-64-5")],
            [(20, "Conc. (%)"), (60, "10 - 25"), (100, "1 - < 5"), (140, "0.5")],
            [(20, "Classification"), (60, "Skin Irrit. 2, H315"), (100, "Skin Sens. 1, H317"), (140, "Acute Tox. 4, H302")],
            [(20, "according to"), (60, "Skin Sens. 1B, H317")],
            [(20, "Regulation (EC) No 1272/2008")],
            [(20, "Chemical name"), (60, "Eugenol")],
            [(20, "CAS No."), (60, "97-53-0")],
            [(20, "Conc. (%)"), (60, "< 1")],
            [(20, "Classification"), (60, "Skin Sens. 1B, H317")],
        ]);
        Assert.Equal(["Linalool 10 - 25 % 2", "Citral 1 - < 5 % 1", "Coumarin 0.5 % 1", "Eugenol < 1 % 1"], draft.Ingredients.Select(Told));
        Assert.All(draft.Ingredients, i => Assert.Empty(i.Doubts));
    }

    [Fact]
    public void Dots_may_lead_from_a_name_to_its_share()
    {
        OilDraft draft = Sheet([
            [(20, "Linalool (CAS No. 78-70-6, EC No. 201-134-4) . . . . . . . . 10 - 25 %")],
            [(25, "Skin Irrit. 2, H315; Skin Sens. 1B, H317")],
            [(20, "Citral (CAS No. 5392-40-5, EC No. 226-394-6) . . . . . . 1 - < 5 %")],
            [(25, "Skin Sens. 1, H317")],
        ]);
        Assert.Equal(["Linalool 10 - 25 % 2", "Citral 1 - < 5 % 1"], draft.Ingredients.Select(Told));
    }

    [Fact]
    public void A_heading_of_several_rows_is_no_row_and_is_told()
    {
        OilDraft draft = Blocks(
            new TableBlock(
                [Cells("Component", "Conc. (%)", "Classification")],
                [
                    [new TableCell(["Fragrances"], 3)],
                    Cells("Linalool\nCAS 78-70-6 \u00b7 EC 201-134-4", "10 - 25", "Skin Irrit. 2, H315\nSkin Sens. 1B, H317"),
                    [new TableCell(["Solvents"], 3)],
                    Cells("Benzyl benzoate\nCAS 120-51-4 \u00b7 EC 204-402-9", "1 - < 5", "Acute Tox. 4, H302"),
                ],
                [60, 30, 60],
                TableRules.Level,
                true,
                false
            )
        );
        Assert.Equal(["Linalool 10 - 25 % 2", "Benzyl benzoate 1 - < 5 % 1"], draft.Ingredients.Select(Told));
        Assert.Equal(["201-134-4", "204-402-9"], draft.Ingredients.Select(i => i.Ec!.Value));
        Assert.Contains(draft.Ingredients[0].Doubts, d => d.Contains("'Fragrances' above it", StringComparison.Ordinal));
        Assert.Contains(draft.Ingredients[0].Doubts, d => d.Contains("'Solvents' under it", StringComparison.Ordinal));
        Assert.Contains(draft.Ingredients[1].Doubts, d => d.Contains("'Solvents' above it", StringComparison.Ordinal));
    }

    [Fact]
    public void A_mark_that_leads_to_a_footnote_and_a_column_of_pictograms_are_left_out()
    {
        OilDraft draft = Blocks(
            new TableBlock(
                [Cells("Hazardous component", "CAS / EC", "Wt %", "Pictogram, signal word", "CLP classification")],
                [
                    Cells("Linalool [1]", "78-70-6\n201-134-4", "10 - 25", "GHS07\nWarning", "Skin Irrit. 2, H315; Skin Sens. 1B, H317"),
                    Cells("Citral [2]", "5392-40-5\n226-394-6", "1 - < 5", "GHS07\nWarning", "Skin Sens. 1, H317"),
                ],
                [40, 30, 25, 35, 50],
                TableRules.Grid,
                false,
                false
            )
        );
        Assert.Equal(["Linalool 10 - 25 % 2", "Citral 1 - < 5 % 1"], draft.Ingredients.Select(Told));
        Assert.All(draft.Ingredients, i => Assert.Empty(i.Doubts));
    }

    [Fact]
    public void From_and_up_to_are_the_ends_of_a_share()
    {
        DraftIngredient row = Assert.Single(
            Sheet([
                [(20, "Substance"), (60, "Identifier"), (90, "from [%]"), (115, "up to [%]"), (140, "Hazards")],
                [(20, "Linalool"), (60, "CAS 78-70-6"), (90, "10"), (115, "25"), (140, "Skin Sens. 1B: H317")],
                [(60, "EC 201-134-4")],
            ]).Ingredients
        );
        Assert.Equal(("Linalool", "10 - 25 %", "201-134-4"), (row.Name.Value, row.Share!.Value, row.Ec!.Value));
        Assert.Equal(["Skin Sens. 1B, H317"], row.Classes!.Value);
    }

    [Fact]
    public void The_ends_of_a_share_may_be_headed_by_signs()
    {
        DraftIngredient row = Sheet([
            [(20, "Ingredient"), (60, "CAS-No."), (90, "Range wt%"), (130, "GHS classification")],
            [(90, "\u2265"), (104, "<")],
            [(20, "Linalool"), (60, "78-70-6"), (90, "10"), (104, "25"), (130, "Skin Sens. 1B, H317")],
            [(20, "Citronellol"), (60, "106-22-9"), (90, "2.5"), (104, "10"), (130, "Skin Irrit. 2, H315")],
        ]).Ingredients[1];
        Assert.Equal(("Citronellol", "2.5 - 10 %"), (row.Name.Value, row.Share!.Value));
    }

    [Fact]
    public void A_heading_too_long_for_its_column_leaves_the_next_one_its_own()
    {
        OilDraft draft = Sheet([
            [(20, "Name"), (60, "Classification"), (100, "CAS No."), (130, "Hazard statements"), (148, "%")],
            [(20, "Linalool"), (60, "Skin Sens. 1B"), (100, "78-70-6"), (130, "H317"), (148, "1 - 5")],
            [(20, "Citral"), (60, "Skin Sens. 1"), (100, "5392-40-5"), (130, "H317"), (148, "< 1")],
        ]);
        Assert.Equal(["Linalool 1 - 5 % 1", "Citral < 1 % 1"], draft.Ingredients.Select(Told));
    }

    [Fact]
    public void The_to_of_according_to_heads_no_column()
    {
        (float, string)[][] Of(string name, string cas) =>
            [
                [(20, name), (60, cas), (90, "H225 Flam. Liq. 2"), (140, "1 - 5")],
                [(90, "H319 Eye Irrit. 2")],
            ];
        OilDraft draft = Sheet([
            [(20, "Substance"), (60, "CAS No."), (90, "Classification according to"), (140, "% by weight")],
            [(90, "Regulation (EC) No 1272/2008")],
            .. Enumerable.Range(0, 18).SelectMany(n => Of($"Substance {(char)('a' + n)}", Cas(n))),
            [(20, "Decanoic acid"), (60, "334-48-5"), (90, "H315 Skin Irrit. 2; H319 Eye Irrit. 2;"), (140, "5.2")],
            [(90, "H412 Aquatic Chronic 3")],
        ]);
        Assert.Equal("Decanoic acid 5.2 % 3", Told(draft.Ingredients[^1]));
    }

    [Fact]
    public void A_table_of_estimates_says_once_what_its_columns_are()
    {
        OilDraft draft = Sheet(
            [
                [(20, "Name"), (60, "CAS No."), (90, "Conc. (%)"), (120, "Classification")],
                [(20, "Linalool"), (60, "78-70-6"), (90, "1 - 5"), (120, "Skin Sens. 1B, H317")],
                [(20, "Cinnamal"), (60, "104-55-2"), (90, "1 - 5"), (120, "Acute Tox. 4, H312; ATE (dermal): 1100 mg/kg")],
            ],
            [(20, "SECTION 11: Toxicological information")],
            [(20, "Substance"), (70, "LD50 oral, rat"), (110, "LD50 dermal, rabbit")],
            [(20, "Linalool"), (70, "2790 mg/kg"), (110, "5610 mg/kg")],
            [(20, "Cinnamal"), (70, "2220 mg/kg"), (110, "1100 mg/kg")]
        );
        Assert.Equal(
            ["Oral 2790 Dermal 5610", "Dermal 1100 Oral 2220"],
            draft.Ingredients.Select(i => string.Join(' ', i.Toxicity!.Value.Select(t => $"{t.Route} {t.Value}")))
        );
    }

    [Fact]
    public void A_dose_that_is_not_understood_is_told()
    {
        OilDraft draft = Sheet(
            [
                [(20, "Name"), (60, "CAS No."), (90, "Conc. (%)"), (120, "Classification")],
                [(20, "Linalool"), (60, "78-70-6"), (90, "1 - 5"), (120, "Skin Sens. 1B, H317")],
            ],
            [(20, "SECTION 11: Toxicological information")],
            [(20, "Linalool"), (70, "2790 mg/kg")]
        );
        Assert.Contains(draft.Ingredients[0].Doubts, d => d.Contains("2790 mg/kg", StringComparison.Ordinal));
    }

    [Fact]
    public void A_sheet_whose_first_heading_is_lost_still_has_a_name()
    {
        OilDraft draft = TestDrafts.Read(
            Print([
                [(20, "Product name: Night Fig")],
                [(20, "SECTION 2: Hazards identification")],
                [(20, "-")],
                [(20, "SECTION 3: Composition/information on ingredients")],
                [(20, "Name"), (60, "CAS No."), (90, "Conc. (%)"), (120, "Classification")],
                [(20, "Linalool"), (60, "78-70-6"), (90, "1 - 5"), (120, "Skin Sens. 1B, H317")],
                [(20, "SECTION 4: First aid measures")],
            ])
        );
        Assert.Equal("Night Fig", draft.Name!.Value);
    }

    [Fact]
    public void A_lack_in_the_head_hides_no_contradiction()
    {
        OilDraft draft = Sheet([
            [(20, "Name"), (60, "CAS No."), (90, "Conc. (%)"), (120, "Classification")],
            [(20, "Benzyl benzoate"), (60, "120-51-4"), (90, "90 - 100"), (120, "Aquatic Chronic 2, H411")],
        ]);
        string yaml = DraftYaml
            .Write(draft with { Sources = [new DraftSource("sheet.pdf", new string('0', 64), SheetKind.SafetyDataSheet)] })
            .Text;
        IReadOnlyList<string> told = DraftChecks.Contradictions(yaml, "sheet.yaml", TestLaw.Lawbook, TestLaw.Today);
        Assert.Contains(told, t => t.Contains("'supplier' is missing", StringComparison.Ordinal));
        // CLP Annex VI gives benzyl benzoate Acute Tox. 4 (oral), which the row lacks.
        Assert.Contains(told, t => t.Contains("Acute Tox. 4", StringComparison.Ordinal));
    }

    [Fact]
    public void Review_pages_outline_the_row_and_say_what_speaks_against_each_value()
    {
        byte[] pdf = Print([
            [(20, "SECTION 1: Identification of the substance/mixture")],
            [(20, "SECTION 2: Hazards identification")],
            [(20, "SECTION 3: Composition/information on ingredients")],
            [(20, "Name"), (60, "CAS No."), (90, "Conc. (%)"), (120, "Classification")],
            [(20, "Linalool"), (60, "78-70-5"), (90, "1 - 5"), (120, "Skin Sens. 1B, H317")],
            [(20, "SECTION 4: First aid measures")],
        ]);
        IReadOnlyList<SheetPage> pages = PdfWords.Parse(pdf).Value;
        Scene page = ReviewPages.Draw(TestDrafts.Of(new SupplierPdf("sheet.pdf", pdf, pages)), 0, pages).Pages[0];
        List<TextItem> under = [.. page.All.OfType<TextItem>().Where(t => t.BaselineMm > pages[0].HeightMm)];
        Assert.Contains(under, t => t.Shaped.Text.StartsWith("1 Linalool, CAS number:", StringComparison.Ordinal));
        Assert.True(page.HeightMm > under[^1].BaselineMm);
        Assert.Equal(5, page.All.OfType<PathItem>().Count(p => p.Path.EndsWith('Z')));
    }

    private static string Told(DraftIngredient i) => $"{i.Name.Value} {i.Share?.Value} {i.Classes?.Value.Count}";

    // A CAS number whose check digit is right: the digits before it, counted from the right, times 1, 2, 3..., modulo 10.
    private static string Cas(int n)
    {
        string digits = $"{200 + n}11";
        int check = digits.Reverse().Select((d, at) => (d - '0') * (at + 1)).Sum() % 10;
        return $"{digits[..3]}-{digits[3..]}-{check}";
    }

    private static IReadOnlyList<TableCell> Cells(params string[] texts) => [.. texts.Select(TableCell.Of)];

    private static OilDraft Blocks(params Block[] composition)
    {
        IReadOnlyList<Block> blocks =
        [
            new HeadingBlock("SECTION 1: Identification of the substance/mixture", 1),
            new ParagraphBlock(["Product name: Night Fig"]),
            new HeadingBlock("SECTION 2: Hazards identification", 1),
            new ParagraphBlock(["-"]),
            new HeadingBlock("SECTION 3: Composition/information on ingredients", 1),
            .. composition,
            new HeadingBlock("SECTION 4: First aid measures", 1),
            new ParagraphBlock(["-"]),
        ];
        var truth = new WildTruth("", null, null, null, null, null, [], null, null, []);
        return TestDrafts.Read(Press.Print(new WildSheet(0, "sheet", "", "en", Paper, blocks, truth)));
    }

    private static OilDraft Sheet((float X, string Text)[][] composition, params (float X, string Text)[][] after) =>
        TestDrafts.Read(
            Print([
                [(20, "SECTION 1: Identification of the substance/mixture")],
                [(20, "Product name: Night Fig")],
                [(20, "SECTION 2: Hazards identification")],
                [(20, "-")],
                [(20, "SECTION 3: Composition/information on ingredients")],
                .. composition,
                [(20, "SECTION 4: First aid measures")],
                [(20, "-")],
                .. after,
            ])
        );

    private static byte[] Print((float X, string Text)[][] lines) => PlacedWords.Print(PlacedWords.Lines(LineMm, lines));
}
