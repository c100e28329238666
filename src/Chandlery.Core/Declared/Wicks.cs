using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>Wicks of a candle.</summary>
/// <param name="Count">How many.</param>
/// <param name="Kind">Kind, in the maker's words.</param>
/// <param name="TrimTo">Length that the buyer trims them to.</param>
public sealed record Wicks(int Count, string? Kind, Millimetres TrimTo)
{
    /// <summary>Those of a product that has none.</summary>
    public static Wicks None { get; } = new(0, null, new Millimetres(0));

    /// <summary>The spacing that the wick maker gives; null when not declared.</summary>
    public WickSpacing? Spacing { get; init; }
}
