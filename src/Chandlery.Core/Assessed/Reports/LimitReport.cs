namespace Chandlery.Core.Assessed.Reports;

internal sealed record LimitReport(
    string Name,
    double? Value,
    double? Limit,
    string Unit,
    double? Margin,
    bool? Holds,
    string Source,
    string Explanation
);
