namespace Chandlery.Paper.Markup;

/// <summary>The hazard pictograms; text flows beside them.</summary>
/// <param name="Codes">GHS codes.</param>
public sealed record Pictograms(IReadOnlyList<string> Codes) : Block;
