namespace Chandlery.Core.Assessed.Reports;

internal sealed record ChangeReport(string On, IReadOnlyList<string> What, string Clause);
