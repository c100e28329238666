using Chandlery.Core.Hazards;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Sheets.Wild;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Intake;

/// <summary>Mistakes that once changed a class without a word, each on the smallest sheet that shows it.</summary>
public sealed class StrangersSheetTests
{
    private static readonly SheetForm Paper = new(210, 297, 15, 8, 1, false, "", "");
    private static readonly string[] Heads = ["Chemical name", "CAS No.", "Conc. (%)", "Classification"];

    [Fact]
    public void Both_columns_of_a_range_are_read()
    {
        DraftIngredient row = Assert.Single(
            Draft(
                Table(
                    ["Chemical name", "CAS No.", "min. %", "max. %", "Classification"],
                    ["Linalool", "78-70-6", "10", "25", "Skin Sens. 1B, H317"]
                )
            ).Ingredients
        );
        Assert.Equal("10 - 25 %", row.Share!.Value);
    }

    [Theory]
    [InlineData("> 5000 mg/kg")]
    [InlineData("2,650 mg/kg")]
    public void An_estimate_never_goes_to_the_substance_before(string first)
    {
        OilDraft draft = Draft(
            Table(Heads, ["Linalool", "78-70-6", "1 - 5", "Skin Sens. 1B, H317"], ["Citral", "5392-40-5", "1 - 5", "Skin Sens. 1, H317"]),
            new HeadingBlock("SECTION 11: Toxicological information", 1),
            new ParagraphBlock(["Linalool", $"LD50 oral rat: {first}", "Citral", "LD50 oral rat: 1440 mg/kg"])
        );
        Assert.DoesNotContain(draft.Ingredients[0].Toxicity?.Value ?? [], t => t.Value == 1440);
        Assert.Equal((ExposureRoute.Oral, 1440), draft.Ingredients[1].Toxicity!.Value.Select(t => (t.Route, t.Value)).Single());
    }

    [Fact]
    public void An_estimate_under_a_name_that_is_only_like_a_rows_is_told_with_that_row()
    {
        OilDraft draft = Draft(
            Table(
                Heads,
                ["Solvents Linalool", "78-70-6", "1 - 5", "Skin Sens. 1B, H317"],
                ["Citral", "5392-40-5", "1 - 5", "Skin Sens. 1, H317"]
            ),
            new HeadingBlock("SECTION 11: Toxicological information", 1),
            new ParagraphBlock(["Linalool", "LD50 oral rat: 2790 mg/kg"])
        );
        Assert.Contains(draft.Ingredients[0].Doubts, MayMean);
        Assert.DoesNotContain(draft.Ingredients[1].Doubts, MayMean);
    }

    [Fact]
    public void An_estimate_beside_a_name_that_no_row_has_is_doubted_for_the_substance_before()
    {
        OilDraft draft = Draft(
            Table(
                Heads,
                ["Solvents Linalool", "78-70-6", "1 - 5", "Skin Sens. 1B, H317"],
                ["Citral", "5392-40-5", "1 - 5", "Skin Sens. 1, H317"]
            ),
            new HeadingBlock("SECTION 11: Toxicological information", 1),
            new ParagraphBlock(["Citral     LD50 oral rat     > 5000 mg/kg", "Linalool     LD50 oral rat     2790 mg/kg"])
        );
        Assert.Contains(draft.Ingredients[0].Doubts, MayMean);
        Assert.True(draft.Ingredients[1].Toxicity is null or { Doubts.Count: > 0 });
    }

    [Fact]
    public void A_heading_below_a_name_in_its_cell_is_told_and_a_wrapped_name_is_not()
    {
        OilDraft draft = Draft(
            Table(
                Heads,
                ["Furfuryl alcohol\nFragrances", "98-00-0", "1 - 5", "Acute Tox. 4, H302\nEye Irrit. 2, H319"],
                ["Benzyl\nbenzoate", "120-51-4", "1 - 5", "Acute Tox. 4, H302\nAquatic Chronic 2, H411"]
            )
        );
        Assert.Contains(draft.Ingredients[0].Name.Doubts, d => d.Contains("begins as a name does", StringComparison.Ordinal));
        Assert.Empty(draft.Ingredients[1].Name.Doubts);
    }

    [Fact]
    public void A_factor_in_a_column_that_is_passed_over_is_told()
    {
        DraftIngredient row = Assert.Single(
            Draft(
                Table([.. Heads, "Remark"], ["Linalool", "78-70-6", "1 - 5", "Aquatic Acute 1, H400", "M-factor (acute): 10"])
            ).Ingredients
        );
        Assert.Null(row.M);
        Assert.Contains(row.Doubts, d => d.Contains("M-factor that was not read", StringComparison.Ordinal));
    }

    [Fact]
    public void A_name_goes_on_with_the_hyphen_that_begins_its_next_line()
    {
        OilDraft draft = Draft(Table(Heads, ["5-Methylheptan-3\n-one", "541-85-5", "1 - 5", "Flam. Liq. 3, H226\nEye Irrit. 2, H319"]));
        Assert.Equal("5-Methylheptan-3-one", draft.Ingredients[0].Name.Value);
    }

    [Fact]
    public void A_statement_in_a_column_that_is_not_read_for_it_is_told()
    {
        DraftIngredient row = Assert.Single(
            Draft(
                Table([.. Heads, "Remark"], ["Dibutyl phthalate", "84-74-2", "1 - 5", "Repr. 1B; Aquatic Acute 1", "H360Df H400"])
            ).Ingredients
        );
        Assert.Contains(row.Doubts, d => d.Contains("prints H360Df", StringComparison.Ordinal));
    }

    private static bool MayMean(string doubt) => doubt.Contains("may mean this substance", StringComparison.Ordinal);

    [Fact]
    public void The_classes_before_an_estimate_stay()
    {
        DraftIngredient row = Assert.Single(
            Draft(Table(Heads, ["Linalool", "78-70-6", "1 - 5", "Skin Irrit. 2, H315; ATE (oral): 500 mg/kg"])).Ingredients
        );
        Assert.Equal(["Skin Irrit. 2, H315"], row.Classes!.Value);
    }

    [Fact]
    public void A_number_on_any_page_that_is_not_drafted_is_named()
    {
        OilDraft draft = Draft(
            Table(Heads, ["Linalool", "78-70-6", "1 - 5", "Skin Sens. 1B, H317"]),
            new HeadingBlock("SECTION 8: Exposure controls/personal protection", 1),
            new ParagraphBlock(["Propan-2-ol 67-63-0"]),
            Table(["Limit"], ["5392-\n40-5"])
        );
        Assert.Contains(draft.Doubts, d => d.Contains("67-63-0", StringComparison.Ordinal));
        Assert.Contains(draft.Doubts, d => d.Contains("5392-40-5", StringComparison.Ordinal));
    }

    [Fact]
    public void Notes_under_a_row_and_running_numbers_are_no_part_of_the_name()
    {
        OilDraft draft = Draft(
            Table(
                ["#", .. Heads],
                ["1", "Linalool\nM-factor (acute) = 10\nATE oral: 500 mg/kg", "78-70-6", "1 - 5", "Aquatic Acute 1, H400"],
                ["2", "Citral", "5392-40-5", "1 - 5", "Skin Sens. 1, H317"]
            )
        );
        Assert.Equal(["Linalool", "Citral"], draft.Ingredients.Select(i => i.Name.Value));
        Assert.Equal(10, draft.Ingredients[0].M!.Value.Acute);
        Assert.Equal(500, draft.Ingredients[0].Toxicity!.Value.Single().Value);
    }

    [Fact]
    public void Classes_of_the_directives_are_none_of_the_product()
    {
        OilDraft draft = Draft(
            [Table(["Classification 1272/2008", "Classification 67/548/EEC"], ["Skin Sens. 1, H317", "Skin Irrit. 2"])],
            Table(Heads, ["Linalool", "78-70-6", "1 - 5", "Skin Sens. 1B, H317"])
        );
        Assert.Equal(["Skin Sens. 1, H317"], draft.Classes!.Value);
    }

    [Fact]
    public void Categories_in_one_cell_share_its_limit()
    {
        IReadOnlyList<Block> blocks =
        [
            new ParagraphBlock(["IFRA certificate", "Product name: Night Fig", "Date: 2026-03-14", "51st Amendment"]),
            Table(["IFRA category", "Maximum level"], ["5A, 5B, 5C", "0.62 %"], ["12", "No restriction"]),
        ];
        DraftIfra ifra = Read(blocks).Ifra!;
        Assert.Equal(["5A 0.62", "5B 0.62", "5C 0.62", "12 not restricted"], ifra.Limits.Select(l => $"{l.Category} {l.Limit.Value}"));
    }

    [Fact]
    public void The_revision_date_is_not_the_day_of_creation_or_printing()
    {
        OilDraft draft = Draft(
            new ParagraphBlock(["Creation date: 2020-01-14", "Print date: 2026-05-17", "Revision date: 2025-02-28"]),
            Table(Heads, ["Linalool", "78-70-6", "1 - 5", "Skin Sens. 1B, H317"])
        );
        Assert.Equal(new DateOnly(2025, 2, 28), draft.Revised!.Value);
    }

    [Fact]
    public void Headings_that_a_narrow_column_breaks_inside_a_word_are_whole()
    {
        DraftIngredient row = Assert.Single(
            Draft(
                Table(
                    ["Concentra\ntion", "CAS No.", "Chemical name", "Hazard\nstate\nments", "Classifica\ntion"],
                    ["1 - 5", "78-70-6", "Linalool", "H317", "Skin Sens. 1B"]
                )
            ).Ingredients
        );
        Assert.Equal(("1 - 5 %", "Linalool"), (row.Share!.Value, row.Name.Value));
        Assert.Equal(["Skin Sens. 1B, H317"], row.Classes!.Value);
        Assert.Empty(row.Classes.Doubts);
    }

    [Fact]
    public void A_number_broken_between_its_figures_is_whole()
    {
        DraftIngredient row = Assert.Single(
            Draft(
                Table(
                    ["Chemical name", "CAS No.", "EC No.", "Conc. (%)", "Classification"],
                    ["Citral", "5392-4\n0-5", "226-39\n4-6", "1 - 5", "Skin Sens. 1, H317"]
                )
            ).Ingredients
        );
        Assert.Equal(("5392-40-5", "226-394-6"), (row.Cas!.Value, row.Ec!.Value));
    }

    [Fact]
    public void A_share_beside_an_estimate_is_no_heading()
    {
        DraftIngredient row = Assert.Single(
            Draft(
                Table(
                    ["Chemical name", "Classification", "CAS No. /\nConc. (%)"],
                    ["Linalool", "Acute Tox. 4, H302\nATE (oral): 500 mg/kg", "78-70-6\n7% - 15%"]
                )
            ).Ingredients
        );
        Assert.Equal("7 - 15 %", row.Share!.Value);
    }

    [Fact]
    public void The_label_of_a_note_in_the_line_above_its_figure_is_no_part_of_the_name()
    {
        OilDraft draft = Draft(
            Table(
                Heads,
                ["Linalool\nAcute toxicity estimate\n(oral): 500 mg/kg", "78-70-6", "1 - 5", "Acute Tox. 4, H302"],
                ["Citral", "5392-40-5", "1 - 5", "Skin Sens. 1, H317"]
            )
        );
        DraftIngredient first = draft.Ingredients[0];
        Assert.True(first.Name.Value == "Linalool" || first.Name.Doubts.Count + first.Doubts.Count > 0, first.Name.Value);
    }

    [Fact]
    public void A_table_without_a_heading_is_read_by_its_shape_and_doubted()
    {
        OilDraft draft = Draft(
            new TableBlock(
                [],
                [
                    Cells("Linalool", "78-70-6", "1 - 5", "Skin Sens. 1B, H317"),
                    Cells("Citral", "5392-40-5", "5 - 10", "Skin Sens. 1, H317"),
                    Cells("Benzyl benzoate", "120-51-4", "10 - 20", "Acute Tox. 4, H302"),
                ],
                [30, 20, 20, 30],
                TableRules.None,
                false,
                false
            )
        );
        Assert.Equal(
            ["Linalool 78-70-6 1 - 5 %", "Citral 5392-40-5 5 - 10 %", "Benzyl benzoate 120-51-4 10 - 20 %"],
            draft.Ingredients.Select(i => $"{i.Name.Value} {i.Cas!.Value} {i.Share!.Value}")
        );
        Assert.All(draft.Ingredients, i => Assert.Contains(i.Doubts, d => d.Contains("no heading", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_row_with_an_EC_number_alone_is_doubted()
    {
        DraftIngredient row = Assert.Single(
            Draft(
                Table(["Chemical name", "EC No.", "Conc. (%)", "Classification"], ["Linalool", "201-134-4", "1 - 5", "Skin Sens. 1B, H317"])
            ).Ingredients
        );
        Assert.Contains(row.Doubts, d => d.Contains("no CAS number", StringComparison.Ordinal));
    }

    [Fact]
    public void A_name_with_the_number_of_another_substance_is_doubted()
    {
        OilDraft draft = DraftChecks.Marked(
            Draft(
                Table(
                    Heads,
                    ["Linalool", "5392-40-5", "1 - 5", "Skin Sens. 1B, H317"],
                    ["Benzyl benzoate", "120-51-4", "1 - 5", "Acute Tox. 4, H302"]
                )
            ),
            TestLaw.Lawbook.Substances
        );
        Assert.Contains(draft.Ingredients[0].Cas!.Doubts, d => d.Contains("78-70-6", StringComparison.Ordinal));
        Assert.Empty(draft.Ingredients[1].Cas!.Doubts);
    }

    [Fact]
    public void An_EC_number_that_does_not_go_with_the_CAS_number_is_doubted()
    {
        OilDraft draft = DraftChecks.Marked(
            Draft(
                Table(
                    ["Chemical name", "CAS No.", "EC No.", "Conc. (%)", "Classification"],
                    ["Linalool", "78-70-6", "226-394-6", "1 - 5", "Skin Sens. 1B, H317"]
                )
            ),
            TestLaw.Lawbook.Substances
        );
        Assert.NotEmpty(draft.Ingredients[0].Ec!.Doubts);
    }

    [Fact]
    [Outside(
        "EC Inventory numbers of CLP Annex VI, Part 3, Table 3: citral 226-394-6, geraniol 203-377-1; numbers of one row are no contradiction"
    )]
    public void A_name_with_the_EC_number_of_another_substance_is_doubted()
    {
        OilDraft draft = DraftChecks.Marked(
            Draft(
                Table(
                    ["Chemical name", "EC No.", "Conc. (%)", "Classification"],
                    ["Citral", "203-377-1", "1 - 5", "Skin Sens. 1B, H317"],
                    ["Geraniol", "203-377-1", "1 - 5", "Skin Sens. 1B, H317"]
                )
            ),
            TestLaw.Lawbook.Substances
        );
        Assert.Contains(draft.Ingredients[0].Ec!.Doubts, d => d.Contains("226-394-6", StringComparison.Ordinal));
        Assert.Empty(draft.Ingredients[1].Ec!.Doubts);
        OilDraft oils = DraftChecks.Marked(
            Draft(Table(Heads, ["Lavender oil", "90063-37-9", "1 - 5", "Skin Sens. 1B, H317"])),
            TestLaw.Lawbook.Substances
        );
        Assert.Empty(oils.Ingredients[0].Cas!.Doubts);
    }

    [Fact]
    public void Shares_of_more_than_the_whole_are_told()
    {
        OilDraft draft = Draft(
            Table(
                Heads,
                ["Linalool", "78-70-6", "60 - 70", "Skin Sens. 1B, H317"],
                ["Benzyl benzoate", "120-51-4", "50 - 60", "Acute Tox. 4, H302"]
            )
        );
        Assert.Contains(draft.Doubts, d => d.Contains("110 %, more than the whole", StringComparison.Ordinal));
    }

    [Fact]
    public void Own_classes_that_the_ingredients_do_not_come_to_are_told()
    {
        OilDraft draft = Draft(
            [new ParagraphBlock(["Skin Irrit. 2, H315"])],
            Table(Heads, ["Benzyl benzoate", "120-51-4", "90 - 100", "Aquatic Chronic 2, H411"])
        );
        string yaml = DraftYaml
            .Write(draft with { Sources = [new DraftSource("sheet.pdf", new string('0', 64), SheetKind.SafetyDataSheet)] })
            .Text;
        IReadOnlyList<string> told = DraftChecks.Contradictions(
            yaml + "supplier: S\ndocument: D\nrevised: 2026-01-01\n",
            "sheet.yaml",
            TestLaw.Lawbook,
            TestLaw.Today
        );
        Assert.Contains(told, t => t.Contains("Skin Irrit. 2", StringComparison.Ordinal));
        // CLP Annex VI gives benzyl benzoate Acute Tox. 4 (oral), which the row lacks.
        Assert.Contains(told, t => t.Contains("Acute Tox. 4", StringComparison.Ordinal));
    }

    private static IReadOnlyList<TableCell> Cells(params string[] texts) => [.. texts.Select(TableCell.Of)];

    private static TableBlock Table(string[] head, params string[][] rows) =>
        new(
            [
                [.. head.Select(TableCell.Of)],
            ],
            [.. rows.Select(r => (IReadOnlyList<TableCell>)[.. r.Select(TableCell.Of)])],
            [.. head.Select(_ => 20.0)],
            TableRules.Head,
            false,
            true
        );

    private static OilDraft Draft(params Block[] composition) => Draft([new ParagraphBlock(["-"])], composition);

    private static OilDraft Draft(Block[] hazards, params Block[] composition) =>
        Read([
            new HeadingBlock("SECTION 1: Identification of the substance/mixture", 1),
            new ParagraphBlock(["Product name: Night Fig"]),
            new HeadingBlock("SECTION 2: Hazards identification", 1),
            .. hazards,
            new HeadingBlock("SECTION 3: Composition/information on ingredients", 1),
            .. composition,
            new HeadingBlock("SECTION 16: Other information", 1),
            new ParagraphBlock(["-"]),
        ]);

    private static OilDraft Read(IReadOnlyList<Block> blocks)
    {
        var truth = new WildTruth("", null, null, null, null, null, [], null, null, []);
        byte[] pdf = Press.Print(new WildSheet(0, "sheet", "", "en", Paper, blocks, truth));
        return TestDrafts.Of(new SupplierPdf("sheet.pdf", pdf, PdfWords.Parse(pdf).Value));
    }
}
