namespace Chandlery.Core.Assessed.Reports;

internal sealed record LoadReport(double MeltOfWax, double MeltOfCandle, double FinishedCandle, double UnscentedTopUp);
