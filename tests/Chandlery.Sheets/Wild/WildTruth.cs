namespace Chandlery.Sheets.Wild;

/// <summary>What a random sheet says; null where it does not say it.</summary>
/// <param name="Name">Product name.</param>
/// <param name="Supplier">Supplier.</param>
/// <param name="Document">Number of the sheet.</param>
/// <param name="Version">Version.</param>
/// <param name="Revised">Revision date.</param>
/// <param name="Classes">Classes of the product.</param>
/// <param name="Ingredients">Ingredients.</param>
/// <param name="Flash">Flash point, degrees Celsius, with its sign.</param>
/// <param name="Density">Density.</param>
/// <param name="Ifra">IFRA limits by category.</param>
public sealed record WildTruth(
    string Name,
    string? Supplier,
    string? Document,
    string? Version,
    DateOnly? Revised,
    IReadOnlyList<string>? Classes,
    IReadOnlyList<WildIngredient> Ingredients,
    string? Flash,
    string? Density,
    IReadOnlyList<(string Category, string Limit)> Ifra
);
