using Chandlery.Core.Hazards;
using Chandlery.Files;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Sheets.Wild;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

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
        var problems = new Problems();
        OilDraft draft = DraftMaker.Make(
            [new SupplierPdf("sheet.pdf", pdf, PdfWords.Parse(pdf).Value)],
            ShippedFiles.Data(null, problems),
            TestLaw.Lawbook.Vocabulary,
            problems
        )!;
        Assert.Empty(problems.Found);
        return draft;
    }
}
