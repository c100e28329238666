namespace Chandlery.Core.Assessed.Reports;

internal sealed record AssessmentReport(
    string Candle,
    string Name,
    string? BatchCode,
    string Edition,
    string AsOf,
    IReadOnlyList<string> SoldIn,
    IReadOnlyList<string> Languages,
    LoadReport LoadPercent,
    IReadOnlyList<IngredientReport> Composition,
    double UnknownPercent,
    IReadOnlyList<ClassReport> Classes,
    StatementsReport Statements,
    IReadOnlyList<string> Pictograms,
    string? SignalWord,
    IReadOnlyList<NamedReport> NamedSubstances,
    IReadOnlyList<ChoiceReport> LeftOff,
    IReadOnlyList<ChoiceReport> SmallPackageMayLeaveOff,
    string? Ufi,
    IReadOnlyList<LimitReport> Limits,
    IReadOnlyList<string> Unassessed,
    IReadOnlyList<FindingReport> Findings,
    bool StopsSale,
    ChangeReport? NextLawChange,
    ChangeReport? NextExpectedChange
);
