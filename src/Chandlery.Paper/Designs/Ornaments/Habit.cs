using Chandlery.Core.Declared;

namespace Chandlery.Paper.Designs.Ornaments;

/// <summary>How the plant of a note grows.</summary>
/// <param name="Spread">How far its leaves stand off the stem, radians.</param>
/// <param name="TopSpread">The same of the two leaves at its end.</param>
/// <param name="Length">Length of its leaves beside those of the others.</param>
/// <param name="Apart">Height from one leaf to the next, of a leaf's length.</param>
/// <param name="Fruit">How often a leaf has a fruit beside it, and its radius of a leaf's length; null for none.</param>
internal sealed record Habit(double Spread, double TopSpread, double Length, double Apart, (int Every, double OfLeaf)? Fruit)
{
    /// <summary>The habit of a note's plant.</summary>
    public static Habit Of(Scent note) =>
        note switch
        {
            Scent.Citrus => new Habit(1, 0.36, 1, 0.5, (7, 0.5)),
            Scent.Sea => new Habit(0.52, 0.2, 1.35, 0.4, (1, 0.05)),
            Scent.Smoke or Scent.Wood => new Habit(0.78, 0.28, 1.2, 0.42, null),
            Scent.Leaf => new Habit(1.05, 0.6, 1.25, 0.72, (3, 0.11)),
            Scent.Flower or Scent.Spice => new Habit(1, 0.5, 1.1, 0.66, null),
            _ => new Habit(0.85, 0.36, 1.05, 0.46, null),
        };
}
