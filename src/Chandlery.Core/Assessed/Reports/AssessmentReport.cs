namespace Chandlery.Core.Assessed.Reports;

internal sealed record AssessmentReport
{
    public required string Candle { get; init; }
    public required string Name { get; init; }
    public required string? BatchCode { get; init; }
    public required string Edition { get; init; }
    public required string AsOf { get; init; }
    public required IReadOnlyList<string> SoldIn { get; init; }
    public required IReadOnlyList<string> Languages { get; init; }
    public required LoadReport LoadPercent { get; init; }
    public required IReadOnlyList<IngredientReport> Composition { get; init; }
    public required double UnknownPercent { get; init; }
    public required IReadOnlyList<ClassReport> Classes { get; init; }
    public required StatementsReport Statements { get; init; }
    public required IReadOnlyList<string> Pictograms { get; init; }
    public required string? SignalWord { get; init; }
    public required IReadOnlyList<NamedReport> NamedSubstances { get; init; }
    public required IReadOnlyList<ChoiceReport> LeftOff { get; init; }
    public required IReadOnlyList<ChoiceReport> SmallPackageMayLeaveOff { get; init; }
    public required string? Ufi { get; init; }
    public required IReadOnlyList<LimitReport> Limits { get; init; }
    public required IReadOnlyList<string> Unassessed { get; init; }
    public required IReadOnlyList<FindingReport> Findings { get; init; }
    public required bool StopsSale { get; init; }
    public required ChangeReport? NextLawChange { get; init; }
    public required ChangeReport? NextExpectedChange { get; init; }
}
