namespace Chandlery.Core.Assessed.Reports;

internal sealed record ChoiceReport(string Code, string Because, string Clause);
