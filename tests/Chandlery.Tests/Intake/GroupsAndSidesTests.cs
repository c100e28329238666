using Chandlery.Intake.Drafts;

namespace Chandlery.Tests.Intake;

/// <summary>
/// Tables on their side whose cells have one middle, headings of groups that no ruled line parts from the rows, headings of columns that
/// stand close, and columns beyond the page's edge: each the smallest sheet that once was read wrongly.
/// </summary>
public sealed class GroupsAndSidesTests
{
    private static readonly (float X, float Y, string Text)[] Before =
    [
        (20, 20, "SECTION 1: Identification of the substance/mixture"),
        (20, 26, "Product name: Night Fig"),
        (20, 32, "SECTION 2: Hazards identification"),
        (20, 38, "-"),
        (20, 44, "SECTION 3: Composition/information on ingredients"),
    ];

    private static readonly (float X, float Y, string Text)[] After = [(20, 240, "SECTION 4: First aid measures"), (20, 246, "-")];

    [Fact]
    public void Cells_of_a_table_on_its_side_may_begin_above_their_heading()
    {
        OilDraft draft = Sheet(
            [(20, 60, "Chemical"), (60, 62, "Linalool"), (120, 62, "Citral"), (20, 64, "name")],
            [(20, 74, "CAS No."), (60, 74, "78-70-6"), (120, 74, "5392-40-5")],
            [(20, 84, "Conc. (%)"), (60, 84, "10 - 25"), (120, 84, "1 - 5")],
            [(60, 94, "Skin Irrit. 2, H315"), (20, 96, "Classification"), (120, 96, "Skin Sens. 1, H317"), (60, 98, "Skin Sens. 1B, H317")]
        );
        Assert.Equal(["Linalool 10 - 25 % 2", "Citral 1 - 5 % 1"], draft.Ingredients.Select(Told));
        Assert.All(draft.Ingredients, i => Assert.Empty(i.Doubts));
    }

    // The line of the name that stands at its number's heading is among figures.
    [Fact]
    public void A_table_on_its_side_is_doubted_where_a_line_stands_under_the_wrong_heading()
    {
        OilDraft draft = Sheet(
            [(20, 60, "Chemical name"), (60, 60, "Linalool"), (120, 60, "Benzyl")],
            [(20, 74, "CAS No."), (60, 74, "78-70-6"), (120, 74, "118-58-1"), (120, 78, "salicylate")],
            [(20, 88, "Conc. (%)"), (60, 88, "10 - 25"), (120, 88, "1 - 5")],
            [(20, 98, "Classification"), (60, 98, "Skin Irrit. 2, H315"), (120, 98, "Skin Sens. 1B, H317")]
        );
        Assert.All(draft.Ingredients, i => Assert.Contains(i.Doubts, d => d.Contains("on its side", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_heading_of_several_lines_may_reach_close_to_the_cells_beside_it()
    {
        OilDraft draft = Sheet(
            [(20, 60, "Chemical name"), (58, 60, "Formaldehyde"), (120, 60, "Citral")],
            [(20, 68, "CAS No."), (58, 68, "50-00-0"), (120, 68, "5392-40-5")],
            [(20, 76, "Conc. (%)"), (58, 76, "10 - 25"), (120, 76, "1 - 5")],
            [(20, 84, "Classification"), (58, 84, "Carc. 1B, H350;"), (120, 84, "Skin Sens. 1, H317")],
            [(20, 88, "by the Regulation on CLP"), (58, 88, "Muta. 2, H341;")],
            [(58, 92, "Skin Sens. 1, H317")]
        );
        Assert.Equal(["Formaldehyde 10 - 25 % 3", "Citral 1 - 5 % 1"], draft.Ingredients.Select(Told));
    }

    [Theory]
    [InlineData("Specific conc. limits, M-factors", "Substance")]
    [InlineData("Specific concentration limits", "Substance")]
    public void No_column_ends_inside_the_name_of_a_heading(string limits, string name)
    {
        OilDraft draft = Sheet(
            [(20, 60, limits), (85, 60, "CAS No."), (110, 60, "%"), (130, 60, name), (160, 60, "Classification")],
            [
                (20, 68, "M (acute) = 1"),
                (85, 68, "81-14-1"),
                (110, 68, "1 - 5"),
                (130, 68, "Musk ketone"),
                (160, 68, "Aquatic Acute 1, H400"),
            ],
            [(85, 76, "78-70-6"), (110, 76, "10 - 25"), (130, 76, "Linalool"), (160, 76, "Skin Sens. 1B, H317")]
        );
        Assert.Equal(["Musk ketone 1 - 5 % 1", "Linalool 10 - 25 % 1"], draft.Ingredients.Select(Told));
        Assert.Equal(1, draft.Ingredients[0].M?.Value.Acute);
    }

    // The group's heading is cut out of the rows, and both rows beside it say so.
    [Fact]
    public void A_heading_of_rows_that_stands_off_from_them_is_in_no_name()
    {
        OilDraft draft = Sheet(
            [(20, 60, "Name"), (90, 60, "CAS No."), (120, 60, "Conc. (%)"), (150, 60, "Classification")],
            [(20, 67, "Fragrances")],
            [(20, 74, "Linalool"), (90, 74, "78-70-6"), (120, 74, "10 - 25"), (150, 74, "Skin Irrit. 2, H315")],
            [(150, 78, "Skin Sens. 1B, H317")],
            [(20, 85, "Solvents")],
            [(20, 92, "Benzyl benzoate"), (90, 92, "120-51-4"), (120, 92, "1 - 5"), (150, 92, "Acute Tox. 4, H302")],
            [(150, 96, "Aquatic Chronic 2, H411")]
        );
        Assert.Equal(["Linalool 10 - 25 % 2", "Benzyl benzoate 1 - 5 % 2"], draft.Ingredients.Select(Told));
        Assert.Contains("'Solvents' under it was taken for the heading of the next rows", draft.Ingredients[0].Doubts);
        Assert.Contains("'Solvents' above it was taken for the heading of several rows", draft.Ingredients[1].Doubts);
    }

    // Rows begin on their first line there, as the numbers under names show.
    [Fact]
    public void A_heading_right_above_a_row_is_in_no_name()
    {
        OilDraft draft = Sheet(
            [(20, 60, "Name"), (90, 60, "Conc. (%)"), (120, 60, "Classification")],
            [(20, 65, "Linalool"), (90, 65, "10 - 25"), (120, 65, "Skin Irrit. 2, H315")],
            [(20, 69, "CAS No. 78-70-6"), (120, 69, "Skin Sens. 1B, H317")],
            [(20, 74, "Solvents")],
            [(20, 78, "Benzyl benzoate"), (90, 78, "1 - 5"), (120, 78, "Acute Tox. 4, H302")],
            [(20, 82, "CAS No. 120-51-4"), (120, 82, "Aquatic Chronic 2, H411")]
        );
        Assert.Equal(["Linalool 10 - 25 % 2", "Benzyl benzoate 1 - 5 % 2"], draft.Ingredients.Select(Told));
        Assert.Contains("'Solvents' above it was taken for the heading of several rows", draft.Ingredients[1].Doubts);
    }

    [Fact]
    public void A_word_in_a_column_of_figures_heads_the_rows_below()
    {
        OilDraft draft = Sheet(
            [(20, 60, "Conc. (%)"), (60, 60, "Name"), (120, 60, "Classification")],
            [(20, 64, "Fragrances")],
            [(20, 68, "10 - 25"), (60, 68, "Linalool"), (120, 68, "Skin Irrit. 2, H315")],
            [(60, 72, "CAS No. 78-70-6"), (120, 72, "Skin Sens. 1B, H317")],
            [(20, 76, "Solvents")],
            [(20, 80, "1 - 5"), (60, 80, "Benzyl benzoate"), (120, 80, "Acute Tox. 4, H302")],
            [(60, 84, "CAS No. 120-51-4"), (120, 84, "Aquatic Chronic 2, H411")]
        );
        Assert.Equal(["Linalool 10 - 25 % 2", "Benzyl benzoate 1 - 5 % 2"], draft.Ingredients.Select(Told));
    }

    // The last line of a name that ends where its row does is no heading of the next.
    [Fact]
    public void A_name_that_begins_above_its_row_keeps_its_first_line()
    {
        OilDraft draft = Sheet(
            [(20, 60, "Name"), (90, 60, "CAS No."), (120, 60, "Conc. (%)"), (150, 60, "Classification")],
            [(20, 66, "Hexamethyl")],
            [(20, 70, "indanopyran"), (90, 70, "1222-05-5"), (120, 70, "10 - 25"), (150, 70, "Aquatic Acute 1, H400")],
            [(20, 76, "Benzyl")],
            [(20, 80, "benzoate"), (90, 80, "120-51-4"), (120, 80, "1 - 5"), (150, 80, "Acute Tox. 4, H302")]
        );
        Assert.Equal(["Hexamethyl indanopyran", "Benzyl benzoate"], draft.Ingredients.Select(i => i.Name.Value));
    }

    [Fact]
    public void A_name_above_its_number_in_the_middle_of_a_row_is_no_heading()
    {
        OilDraft draft = Sheet(
            [(20, 60, "Name"), (60, 60, "Classification"), (120, 60, "Conc. (%)")],
            [(20, 68, "Diethylene glycol")],
            [(20, 72, "CAS No. 111-"), (60, 72, "Acute Tox. 4, H302"), (120, 72, "10 - 25"), (20, 76, "46-6")],
            [(60, 84, "Skin Irrit. 2, H315"), (60, 88, "Skin Sens. 1, H317"), (60, 92, "Eye Irrit. 2, H319")],
            [(20, 86, "Linalool"), (20, 90, "CAS No. 78-70-6"), (120, 88, "1 - 5")]
        );
        Assert.Equal(["Diethylene glycol 10 - 25 % 1", "Linalool 1 - 5 % 3"], draft.Ingredients.Select(Told));
    }

    // Its first letter stands across the edge: one wholly outside the page would not be written into the PDF here.
    [Fact]
    public void A_column_beyond_the_pages_edge_is_told_in_each_row()
    {
        OilDraft draft = Sheet(
            [(20, 60, "Name"), (70, 60, "CAS No."), (100, 60, "Conc. (%)"), (130, 60, "Classification"), (209.2f, 60, "EC No.")],
            [(20, 68, "Linalool"), (70, 68, "78-70-6"), (100, 68, "10 - 25"), (130, 68, "Skin Sens. 1B, H317"), (209.2f, 68, "201-134-4")],
            [(20, 76, "Citral"), (70, 76, "5392-40-5"), (100, 76, "1 - 5"), (130, 76, "Skin Sens. 1, H317"), (209.2f, 76, "226-394-6")]
        );
        Assert.Equal(["Linalool 10 - 25 % 1", "Citral 1 - 5 % 1"], draft.Ingredients.Select(Told));
        Assert.All(draft.Ingredients, i => Assert.Contains(i.Doubts, d => d.Contains("beyond the page's edge", StringComparison.Ordinal)));
    }

    // "x < 15" under "x = concentration" in three columns is no share of 15.
    [Fact]
    public void A_sign_in_a_column_that_is_not_understood_is_told()
    {
        OilDraft draft = Sheet(
            [(20, 60, "Name"), (60, 60, "CAS No."), (90, 60, "x"), (97, 60, "="), (104, 60, "Conc. (%)"), (140, 60, "Classification")],
            [(20, 68, "Linalool"), (60, 68, "78-70-6"), (90, 68, "x"), (97, 68, "<"), (104, 68, "15"), (140, 68, "Skin Sens. 1B, H317")],
            [(20, 76, "Citral"), (60, 76, "5392-40-5"), (90, 76, "x"), (97, 76, "≤"), (104, 76, "5"), (140, 76, "Skin Sens. 1, H317")]
        );
        Assert.All(
            draft.Ingredients,
            i => Assert.True(i.Doubts.Any(d => d.Contains("not understood", StringComparison.Ordinal)) || i.Share?.Value[0] is '<' or '≤')
        );
    }

    [Fact]
    public void The_end_of_a_heading_on_the_next_page_is_no_row()
    {
        OilDraft draft = TestDrafts.Read(
            PlacedWords.Print(
                [
                    .. Before,
                    (20, 250, "Name"),
                    (70, 250, "CAS No."),
                    (100, 250, "Conc. (%)"),
                    (130, 250, "Classification according to Regulation (EC) No"),
                ],
                [
                    (130, 20, "1272/2008"),
                    (130, 30, "Skin Irrit. 2, H315"),
                    (20, 32, "Linalool"),
                    (70, 32, "78-70-6"),
                    (100, 32, "10 - 25"),
                    (130, 34, "Skin Sens. 1B, H317"),
                    (130, 44, "Skin Irrit. 2, H315"),
                    (20, 46, "Citral"),
                    (70, 46, "5392-40-5"),
                    (100, 46, "1 - 5"),
                    (130, 48, "Skin Sens. 1, H317"),
                    .. After,
                ]
            )
        );
        Assert.Equal(["Linalool 10 - 25 % 2", "Citral 1 - 5 % 2"], draft.Ingredients.Select(Told));
    }

    private static string Told(DraftIngredient i) => $"{i.Name.Value} {i.Share?.Value} {i.Classes?.Value.Count}";

    private static OilDraft Sheet(params (float X, float Y, string Text)[][] composition) =>
        TestDrafts.Read(PlacedWords.Print([.. Before, .. composition.SelectMany(l => l), .. After]));
}
