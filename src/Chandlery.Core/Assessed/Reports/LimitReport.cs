namespace Chandlery.Core.Assessed.Reports;

internal sealed record LimitReport
{
    public required string Name { get; init; }
    public required double? Value { get; init; }
    public required double? Limit { get; init; }
    public required string Unit { get; init; }
    public required double? Margin { get; init; }
    public required bool? Holds { get; init; }
    public required string Source { get; init; }
    public required string Explanation { get; init; }
}
