namespace Chandlery.Core.Assessed.Reports;

internal sealed record NamedReport(string Name, string? Cas, string Because, string Clause);
