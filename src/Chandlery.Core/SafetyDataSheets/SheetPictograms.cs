namespace Chandlery.Core.SafetyDataSheets;

/// <summary>Pictograms in a row.</summary>
/// <param name="Codes">GHS codes.</param>
public sealed record SheetPictograms(IReadOnlyList<string> Codes) : SheetBlock;
