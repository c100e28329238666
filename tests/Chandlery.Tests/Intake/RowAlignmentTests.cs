using Chandlery.Intake.Pages;
using Chandlery.Intake.Tables;

namespace Chandlery.Tests.Intake;

/// <summary>Rows read a second time by nothing but how their cells stand to each other; heights of baselines in millimetres.</summary>
public sealed class RowAlignmentTests
{
    private const double TypeSizeMm = 2.8;

    [Fact]
    public void A_line_that_went_to_the_wrong_row_is_told_where_cells_have_one_middle()
    {
        Row[] rows = [Of([11], [9, 13]), Of([22], [18, 22, 26]), Of([31], [31, 35]), Of([41], [39, 43])];
        Assert.Equal([false, false, true, false], Told(rows, RowAlignment.Askew));
    }

    [Fact]
    public void A_line_that_went_to_the_wrong_row_is_told_where_cells_begin_at_one_height()
    {
        Row[] rows = [Of([10], [10, 14]), Of([22], [18, 22, 26]), Of([30, 34], [30]), Of([40], [40, 44, 48])];
        Assert.Equal([false, true, false, false], Told(rows, RowAlignment.Askew));
    }

    [Fact]
    public void Rows_are_told_where_no_way_of_standing_is_common()
    {
        Row[] rows = [Of([11], [9, 13]), Of([20], [20, 24]), Of([30], [30])];
        Assert.Equal([true, true, false], Told(rows, RowAlignment.Askew));
    }

    [Fact]
    public void Notes_under_a_row_do_not_count()
    {
        Row row = Of([11, 17], [9, 13]);
        Row[] rows = [row, Of([22], [20, 24]), Of([32], [30, 34])];
        Assert.Equal([true, false, false], Told(rows, RowAlignment.Askew));
        HashSet<TextLine> notes = [row.Cells[0].Lines[1]];
        Assert.All(RowAlignment.Checked(rows, notes), r => Assert.Empty(r.Doubts));
    }

    [Fact]
    public void A_line_far_below_the_others_of_its_cell_is_told()
    {
        Row[] rows = [Of([10, 13.5], [10, 13.5]), Of([20, 23.5, 33], [20, 23.5])];
        Assert.Equal([false, true], Told(rows, RowAlignment.Apart));
    }

    private static IEnumerable<bool> Told(Row[] rows, string doubt) =>
        RowAlignment.Checked(rows, new HashSet<TextLine>()).Select(r => r.Doubts.Contains(doubt));

    private static Row Of(params double[][] cells) => new(1, [.. cells.Select(c => new Cell([.. c.Select(Line)]))], [], []);

    private static TextLine Line(double baseline) =>
        new(1, [new Word("word", new Box(0, baseline - TypeSizeMm, 10, baseline), TypeSizeMm)]);
}
