namespace Chandlery.Core.Assessed.Reports;

internal sealed record IngredientReport(string Name, string? Cas, double LowPercent, double HighPercent);
