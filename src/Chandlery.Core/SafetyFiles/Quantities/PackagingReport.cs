namespace Chandlery.Core.SafetyFiles.Quantities;

/// <summary>Packaging for programs.</summary>
/// <param name="Sums">Grams by country, year and material.</param>
/// <param name="Marks">Marks and registers that the countries want.</param>
/// <param name="NotDeclared">Candles whose packaging is not declared.</param>
public sealed record PackagingReport(
    IReadOnlyList<PackagingLine> Sums,
    IReadOnlyList<PackagingMarkReport> Marks,
    IReadOnlyList<string> NotDeclared
);
