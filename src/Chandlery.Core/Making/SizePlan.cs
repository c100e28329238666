using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>What goes into each vessel of one size.</summary>
/// <param name="Name">The candle's name.</param>
/// <param name="Count">How many.</param>
/// <param name="FirstEach">First pour into one vessel.</param>
/// <param name="TopUpEach">Second pour into one vessel; zero when there is none.</param>
/// <param name="Gap">What the chosen gap comes to; empty where none was chosen.</param>
public sealed record SizePlan(string Name, int Count, Grams FirstEach, Grams TopUpEach, string Gap);
