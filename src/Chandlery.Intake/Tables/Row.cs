using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Tables;

/// <summary>A row of a table.</summary>
/// <param name="Page">Page on which it starts.</param>
/// <param name="Cells">A cell for each column.</param>
/// <param name="Notes">Lines below it that run across its columns.</param>
/// <param name="Doubts">Why the row's borders are not certain.</param>
internal sealed record Row(int Page, IReadOnlyList<Cell> Cells, IReadOnlyList<TextLine> Notes, IReadOnlyList<string> Doubts)
{
    /// <summary>Where it stands on its first page.</summary>
    public Box Box
    {
        get
        {
            List<TextLine> lines = [.. Cells.SelectMany(c => c.Lines).Concat(Notes)];
            List<TextLine> own = [.. lines.Where(l => l.Page == Page)];
            return Pages.Box.Around((own.Count > 0 ? own : lines).Select(l => l.Box));
        }
    }
}
