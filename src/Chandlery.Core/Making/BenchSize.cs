namespace Chandlery.Core.Making;

/// <summary>What goes into each vessel of one size, as told to programs.</summary>
/// <param name="Name">The candle's name.</param>
/// <param name="Count">How many are sold as one.</param>
/// <param name="Pieces">How many vessels are in one that is sold, such as the cups of a box of tea lights.</param>
/// <param name="FirstGrams">First pour into one vessel.</param>
/// <param name="TopUpGrams">Second pour into one vessel; zero when there is none.</param>
/// <param name="Gap">What the chosen gap comes to; empty where none was chosen.</param>
public sealed record BenchSize(string Name, int Count, int Pieces, double FirstGrams, double TopUpGrams, string Gap);
