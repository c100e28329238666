using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Sheets.Wild;

namespace Chandlery.Tests.Intake;

/// <summary>
/// Sheets whose columns are too narrow or whose pages break badly, each the smallest that shows a mistake which once went without a word.
/// </summary>
public sealed class CloseSetSheetTests
{
    private const float LineMm = 4;
    private static readonly string[] Before =
    [
        "SECTION 1: Identification of the substance/mixture",
        "Product name: Night Fig",
        "SECTION 2: Hazards identification",
        "-",
        "SECTION 3: Composition/information on ingredients",
    ];

    private static readonly string[] After = ["SECTION 4: First aid measures", "-", "SECTION 5: Firefighting measures", "-"];

    [Theory]
    [InlineData("203-721-0Ethyl formate 1", "203-721-0", "Ethyl")]
    [InlineData("6259-76-3< 7", "6259-76-3", "<")]
    [InlineData("01-2119400007-59-0000Butoxyethanol", "01-2119400007-59-0000", "Butoxyethanol")]
    public void A_number_ends_where_the_next_cell_begins_right_behind_it(string printed, params string[] words)
    {
        byte[] pdf = Print([.. Before.Append(printed).Concat(After).Select(l => new[] { (20f, l) })]);
        IEnumerable<string> read = PdfWords.Parse(pdf).Value[0].Words.Select(w => w.Text);
        Assert.All(words, w => Assert.Contains(w, read));
    }

    // Of a page that is too narrow for its table, readers see the beginning of a figure and take it for the whole.
    [Theory]
    [InlineData(190)]
    [InlineData(201)]
    [InlineData(202)]
    [InlineData(203)]
    [InlineData(205)]
    [InlineData(206)]
    public void A_figure_that_the_pages_edge_cuts_is_told(float x)
    {
        DraftIngredient row = Row(
            "78-70-6",
            [(20, "Name"), (60, "CAS No."), (90, "Classification"), (190, "Conc. (%)")],
            [(20, "Citral"), (60, "5392-40-5"), (90, "Skin Sens. 1, H317"), (x, "1 - 5")],
            [(20, "Linalool"), (60, "78-70-6"), (90, "Skin Sens. 1B, H317"), (x, "10.5 - 12.5")]
        );
        bool isDoubted = row.Doubts.Count + (row.Share?.Doubts.Count ?? 0) > 0;
        Assert.Equal(x > 195, isDoubted);
        Assert.True(isDoubted || row.Share?.Value == "10.5 - 12.5 %");
    }

    [Fact]
    public void A_word_that_stands_in_two_columns_is_told()
    {
        DraftIngredient row = Row(
            "100-51-6",
            [(20, "Name"), (60, "CAS No."), (82, "Conc. (%)"), (110, "Classification")],
            [(20, "Linalool"), (60, "78-70-6"), (82, "1 - 5"), (110, "Skin Sens. 1B, H317")],
            [(20, "Tetramethylacetyloctahydrobenzylalcohol"), (60, "100-51-6"), (82, "1 - 5"), (110, "Acute Tox. 4, H302")]
        );
        Assert.Contains(row.Doubts, d => d.Contains("border between two columns", StringComparison.Ordinal));
    }

    [Fact]
    public void Running_numbers_that_a_narrow_column_breaks_are_no_rows()
    {
        (float, string)[][] rows =
        [
            .. Enumerable
                .Range(1, 11)
                .SelectMany(n =>
                {
                    (float, string)[] row =
                    [
                        (30, "Skin Sens. 1"),
                        (60, "H317"),
                        (95, $"1 - {n + 1}"),
                        (110, Cas(n)),
                        (140, $"Substance {(char)('a' + n)}"),
                    ];
                    string figures = $"{n}";
                    return figures.Length == 1
                        ? new[] { [.. row.Prepend((20, figures))], new[] { (30f, "Eye Irrit. 2"), (60f, "H319") } }
                        : [row, [(20, figures[..1]), (30, "Eye Irrit. 2"), (60, "H319")], [(20, figures[1..])]];
                }),
        ];
        OilDraft draft = Draft([
            [(20, "#"), (30, "Classification"), (60, "Hazard statements"), (95, "%"), (110, "CAS No."), (140, "Name")],
            .. rows,
        ]);
        Assert.Equal(11, draft.Ingredients.Count);
        Assert.All(draft.Ingredients, i => Assert.Equal(["Skin Sens. 1, H317", "Eye Irrit. 2, H319"], i.Classes!.Value));
        Assert.All(draft.Ingredients, i => Assert.Equal("", string.Join('\n', i.Doubts)));
    }

    [Fact]
    public void A_factor_that_ends_two_pages_is_no_foot()
    {
        (float, string)[] head = [(20, "Name"), (60, "CAS No."), (85, "Conc. (%)"), (110, "Classification")];
        (float, string)[][] Page(int from) =>
            [
                .. Enumerable
                    .Range(from, 24)
                    .Select(n =>
                        new (float, string)[]
                        {
                            (20, $"Substance {(char)('a' + n)}"),
                            (60, Cas(n)),
                            (85, "1 - 2"),
                            (110, "Aquatic Acute 1, H400"),
                        }
                    ),
                [(110, "M (acute) = 10")],
            ];
        string[] hand = [.. Before];
        (float, string)[][] first = [.. hand.Select(l => new[] { (20f, l) }), head, .. Page(0)];
        (float, string)[][] second = [.. Enumerable.Repeat(Array.Empty<(float, string)>(), hand.Length), head, .. Page(24)];
        OilDraft draft = TestDrafts.Read(Print(8, first, second, [.. After.Select(l => new[] { (20f, l) })]));
        Assert.Equal(10, draft.Ingredients.Single(i => i.Cas!.Value == Cas(23)).M?.Value.Acute);
        Assert.Equal(10, draft.Ingredients.Single(i => i.Cas!.Value == Cas(47)).M?.Value.Acute);
    }

    [Fact]
    public void A_number_that_a_pages_end_tore_off_its_row_goes_back_to_it()
    {
        (float, string)[] head = [(20, "Name"), (60, "CAS No."), (85, "Conc. (%)"), (110, "Classification")];
        (float, string)[][] first =
        [
            .. Before.Select(l => new[] { (20f, l) }),
            head,
            [(20, "Linalool"), (60, "78-70-6"), (85, "5 - 10"), (110, "Skin Sens. 1B, H317")],
            [(20, "Hexyl cinnamal"), (85, "1 - 5"), (110, "Skin Sens. 1B, H317")],
        ];
        (float, string)[][] second =
        [
            head,
            [(60, "101-86-0")],
            [(20, "Coumarin"), (60, "91-64-5"), (85, "0.5 - 1"), (110, "Acute Tox. 4, H302")],
        ];
        OilDraft draft = TestDrafts.Read(Print(8, first, second, [.. After.Select(l => new[] { (20f, l) })]));
        Assert.Equal(
            ["Linalool 78-70-6", "Hexyl cinnamal 101-86-0", "Coumarin 91-64-5"],
            draft.Ingredients.Select(i => $"{i.Name.Value} {i.Cas?.Value}")
        );
    }

    [Fact]
    public void An_estimate_finds_the_name_that_section_3_breaks_and_one_of_nobody_is_told()
    {
        OilDraft draft = Draft(
            [
                [(20, "Name"), (60, "CAS No."), (85, "Conc. (%)"), (110, "Classification")],
                [(20, "2-(4-tert-Butylben-"), (60, "80-54-6"), (85, "1 - 5"), (110, "Acute Tox. 4, H302")],
                [(20, "zyl)propionaldehyde")],
                [(20, "Linalool"), (60, "78-70-6"), (85, "1 - 5"), (110, "Skin Sens. 1B, H317")],
            ],
            "SECTION 11: Toxicological information",
            "Propylidene phthalide",
            "LD50 oral rat: 1650 mg/kg",
            "2-(4-tert-Butylbenzyl)propionaldehyde",
            "LD50 oral rat: 1390 mg/kg"
        );
        Assert.Equal(1390, Assert.Single(draft.Ingredients[0].Toxicity!.Value).Value);
        Assert.Contains(draft.Doubts, d => d.Contains("1650 mg/kg' under 'Propylidene phthalide'", StringComparison.Ordinal));
    }

    [Fact]
    public void All_lines_between_the_rules_of_a_heading_are_the_heading()
    {
        IReadOnlyList<TableCell> Cells(params string[] texts) => [.. texts.Select(TableCell.Of)];
        var table = new TableBlock(
            [Cells("CAS-\nnummer", "Indeling volgens\nVerordening (EG) nr.\n1272/2008", "Stofnaam", "H-zinnen", "Gehalte (%\nm/m)")],
            [
                Cells(
                    "78-83-1",
                    "Flam. Liq. 3\nSTOT SE 3\nSkin Irrit. 2\nEye Dam. 1\nSTOT SE 3",
                    "Isobutanol",
                    "H226\nH335\nH315\nH318\nH336",
                    "15 - 20"
                ),
                Cells("5392-40-5", "Skin Irrit. 2\nSkin Sens. 1", "Citral", "H315\nH317", ">=0,05 -\n<=0,25"),
                Cells("94-59-7", "Carc. 1B\nMuta. 2\nAcute Tox. 4", "Safrole", "H350\nH341\nH302", "0,1 - 0,5"),
            ],
            [18, 36, 34, 16, 22],
            TableRules.Grid,
            true,
            true
        );
        IEnumerable<Block> Lines(IEnumerable<string> lines) => lines.Select(l => new ParagraphBlock([l]));
        var truth = new WildTruth("", null, null, null, null, null, [], null, null, []);
        var form = new SheetForm(210, 297, 15, 8, 1, false, "", "");
        OilDraft draft = TestDrafts.Read(
            Press.Print(new WildSheet(0, "sheet", "", "nl", form, [.. Lines(Before), table, .. Lines(After)], truth))
        );
        Assert.Equal([5, 2, 3], draft.Ingredients.Select(i => i.Classes!.Value.Count));
    }

    [Fact]
    public void A_name_that_begins_above_its_row_is_no_heading()
    {
        (float, string)[][] Down(int millimetres, params (float, string)[] line) =>
            [line, .. Enumerable.Repeat(Array.Empty<(float, string)>(), millimetres - 1)];
        OilDraft draft = TestDrafts.Read(
            Print(
                1,
                [
                    .. Before.SelectMany(l => Down(5, (20, l))),
                    .. Down(3, (20, "CAS"), (50, "Conc."), (80, "Chemical"), (120, "Classification")),
                    .. Down(4, (20, "number"), (50, "(%)"), (80, "name")),
                    .. Down(2, (80, "Bis(2-ethylhexyl)")),
                    .. Down(2, (20, "117-81-7"), (50, "1 - 5"), (120, "Repr. 1B, H360FD")),
                    .. Down(4, (80, "phthalate")),
                    .. Down(4, (20, "78-70-6"), (50, "1 - 5"), (80, "Linalool"), (120, "Skin Sens. 1B, H317")),
                    .. Down(5, (20, "98-86-2"), (50, "1 - 5"), (80, "Acetophenone"), (120, "Acute Tox. 4, H302")),
                    .. After.SelectMany(l => Down(5, (20, l))),
                ]
            )
        );
        Assert.Equal("Bis(2-ethylhexyl) phthalate", draft.Ingredients[0].Name.Value);
    }

    [Fact]
    public void A_column_of_names_without_any_is_told()
    {
        DraftIngredient row = Row(
            "78-70-6",
            [(20, "Name"), (60, "CAS No."), (85, "Conc. (%)"), (110, "Classification")],
            [(60, "78-70-6"), (85, "1 - 5"), (110, "Skin Sens. 1B, H317")]
        );
        Assert.Contains("the row gives no name", row.Name.Doubts);
    }

    // A CAS number whose check digit is right: the digits before it, counted from the right, times 1, 2, 3..., modulo 10.
    private static string Cas(int n)
    {
        string digits = $"{200 + n}11";
        int check = digits.Reverse().Select((d, at) => (d - '0') * (at + 1)).Sum() % 10;
        return $"{digits[..3]}-{digits[3..]}-{check}";
    }

    private static DraftIngredient Row(string cas, params (float, string)[][] table) =>
        Assert.Single(Draft(table).Ingredients, i => i.Cas?.Value == cas);

    private static OilDraft Draft((float X, string Text)[][] table, params string[] after) =>
        TestDrafts.Read(
            Print([.. Before.Select(l => new[] { (20f, l) }), .. table, .. After.Concat(after).Select(l => new[] { (20f, l) })])
        );

    private static byte[] Print((float X, string Text)[][] page) => Print(LineMm, page);

    private static byte[] Print(float lineMm, params (float X, string Text)[][][] pages) =>
        PlacedWords.Print([.. pages.Select(p => PlacedWords.Lines(lineMm, p))]);
}
