using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Notified;

/// <summary>What a generic identifier could stand for in a candle's notification.</summary>
/// <param name="Identifier">The word and its conditions.</param>
/// <param name="Components">Names of the ingredients that could be called so; never empty.</param>
/// <param name="Total">What they come to at most, percent of the candle.</param>
public sealed record GenericUse(GenericIdentifier Identifier, IReadOnlyList<string> Components, MassPercent Total)
{
    /// <summary>Whether they may be called so: together they must not come to more than the law allows.</summary>
    public bool IsAllowed => !Total.Exceeds(Identifier.UpTo);
}
