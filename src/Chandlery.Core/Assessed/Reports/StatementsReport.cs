namespace Chandlery.Core.Assessed.Reports;

internal sealed record StatementsReport(
    IReadOnlyList<StatementReport> Hazard,
    IReadOnlyList<StatementReport> Supplemental,
    IReadOnlyList<StatementReport> Precautionary
);
