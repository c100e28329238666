using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Tables;

/// <summary>A row of a table.</summary>
/// <param name="Page">Page on which it starts.</param>
/// <param name="Cells">A cell for each column.</param>
/// <param name="Doubts">Why the row's borders are not certain.</param>
internal sealed record Row(int Page, IReadOnlyList<Cell> Cells, IReadOnlyList<string> Doubts)
{
    /// <summary>Where it stands on its first page.</summary>
    public Box Box => Pages.Box.Around(Cells.SelectMany(c => c.Lines).Where(l => l.Page == Page).Select(l => l.Box));
}
