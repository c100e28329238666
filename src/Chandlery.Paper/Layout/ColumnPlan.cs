namespace Chandlery.Paper.Layout;

/// <summary>How blocks are dealt out to columns.</summary>
/// <param name="Columns">The columns from left to right.</param>
/// <param name="Unevenness">How unlike the columns are, 0 for the same height everywhere; what is torn apart counts too.</param>
/// <param name="Torn">How many columns begin in the middle of a text.</param>
internal sealed record ColumnPlan(IReadOnlyList<Column> Columns, double Unevenness, int Torn);
