namespace Chandlery.Intake.Tables;

/// <summary>One way to part lines into rows.</summary>
/// <param name="Starts">Index of the line with which each row starts, rising.</param>
/// <param name="IsShown">True when the page itself shows that rows part there: by rules, by clearly wider gaps, by everything standing on a row's first line.</param>
/// <param name="Score">How well its rows look like rows: the more the better.</param>
internal sealed record RowSplit(IReadOnlyList<int> Starts, bool IsShown, double Score);
