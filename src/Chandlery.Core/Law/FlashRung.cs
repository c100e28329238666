using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>One category of flammable liquids, by flash point and boiling point.</summary>
/// <param name="Result">The category.</param>
/// <param name="FlashBelow">The flash point must lie below it; null where the other bound is the law's.</param>
/// <param name="FlashUpTo">The flash point may be as high as this; null where the other bound is the law's.</param>
/// <param name="BoilingUpTo">The initial boiling point may be as high as this; null where it does not matter.</param>
public sealed record FlashRung(HazardCategory Result, Celsius? FlashBelow, Celsius? FlashUpTo, Celsius? BoilingUpTo)
{
    /// <summary>The bound of the flash point.</summary>
    public Celsius Bound => FlashBelow ?? FlashUpTo ?? throw new InvalidOperationException("a rung of flash points has a bound");

    /// <summary>Whether a flash point lies within the bound.</summary>
    public bool Takes(Celsius flash) => FlashBelow is { } below ? flash.Value < below.Value : flash.Value <= Bound.Value;
}
