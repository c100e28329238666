using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Tables;

/// <summary>A line of a table's body, cut into its columns.</summary>
/// <param name="Line">The whole line.</param>
/// <param name="Cells">The words in each column; null where there are none.</param>
/// <param name="Spans">True when it runs across columns, as notes under a row do; its words are in no cell then.</param>
internal sealed record BodyLine(TextLine Line, IReadOnlyList<TextLine?> Cells, bool Spans);
