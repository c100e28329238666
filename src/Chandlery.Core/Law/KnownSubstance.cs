namespace Chandlery.Core.Law;

/// <summary>A substance of the trade: its numbers and the names by which it goes. Its classes are the law's or the supplier's.</summary>
/// <param name="Cas">CAS number.</param>
/// <param name="Ec">EC number; null when not known.</param>
/// <param name="Names">Names, the usual one first.</param>
/// <param name="NonAdditiveKind">Kind of substance whose irritation may not add up, such as aldehyde; null for others.</param>
/// <param name="AllergenName">Its name as a fragrance allergen in the Union's cosmetics law; null for others.</param>
public sealed record KnownSubstance(string Cas, string? Ec, IReadOnlyList<string> Names, string? NonAdditiveKind, string? AllergenName)
{
    /// <summary>
    /// The rows of that law that its number stands in. Where there are several (sweet orange oil: of the flower and of the peel), the number
    /// does not tell which name it has, and <see cref="AllergenName"/> is null.
    /// </summary>
    public IReadOnlyList<string> AllergenRows { get; init; } = AllergenName is null ? [] : [AllergenName];

    /// <summary>True where that allergen is several substances (the pinenes), so that its name tells less than one of its own.</summary>
    public bool SharesAllergenName { get; init; }
}
