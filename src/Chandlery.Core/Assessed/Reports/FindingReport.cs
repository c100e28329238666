namespace Chandlery.Core.Assessed.Reports;

internal sealed record FindingReport(bool StopsSale, string What, string Clause);
