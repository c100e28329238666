namespace Chandlery.Core.Assessed.Reports;

internal sealed record StatementReport(string Code, string Text, string Because, string Clause);
