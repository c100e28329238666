using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Asked.Trials;

/// <summary>In what a trial is assessed: a blend alone has no class, a candle has.</summary>
/// <param name="Wax">The wax that it is stirred into.</param>
/// <param name="Load">How much of it, above 0.</param>
/// <param name="Places">Where the candle would be sold, one at least.</param>
public sealed record TrialQuestion(Wax Wax, FragranceLoad Load, IReadOnlyList<Place> Places)
{
    /// <summary>The temperature at which the oil would be added; null when nobody has said, and flash points are not checked then.</summary>
    public Celsius? AddingAt { get; init; }

    /// <summary>What kind of product it would be: what is said and which category of certificates is asked follow from it.</summary>
    internal ProductKind? Kind { get; init; }
}
