using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>How the wax fills the vessel.</summary>
/// <param name="Hot">Volume of one candle's wax when poured; null without a density.</param>
/// <param name="Cold">Volume when set; null without a density.</param>
/// <param name="Room">Volume up to the fill line or the headspace; null when not declared.</param>
/// <param name="ShrinkPercent">How much the volume shrinks on setting, percent; null without both densities.</param>
/// <param name="NetForRoom">Net mass that would fill the room when set; null when not known.</param>
/// <param name="Note">In words.</param>
public sealed record FillPlan(Millilitres? Hot, Millilitres? Cold, Millilitres? Room, double? ShrinkPercent, Grams? NetForRoom, string Note)
{
    /// <summary>Volume to the brim by the size of the inside, beside the declared water measure; null when the inside is not declared.</summary>
    public Millilitres? ByGeometry { get; init; }
}
