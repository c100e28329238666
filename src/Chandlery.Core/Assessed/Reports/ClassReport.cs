namespace Chandlery.Core.Assessed.Reports;

internal sealed record ClassReport(string Class, string Category, string Statement, WorkingReport Working);
