using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>Wicks of a candle.</summary>
/// <param name="Count">How many.</param>
/// <param name="Kind">Kind, in the maker's words.</param>
/// <param name="TrimTo">Length that the buyer trims them to.</param>
public sealed record Wicks(int Count, string? Kind, Millimetres TrimTo)
{
    /// <summary>The spacing that the wick maker gives; null when not declared.</summary>
    public WickSpacing? Spacing { get; init; }
}
