using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making;

/// <summary>What goes into each vessel of one size.</summary>
/// <param name="Name">The candle's name.</param>
/// <param name="Count">How many.</param>
/// <param name="FirstEach">First pour into what is sold as one.</param>
/// <param name="TopUpEach">Second pour into what is sold as one; zero when there is none.</param>
/// <param name="Gap">What the chosen gap comes to; empty where none was chosen.</param>
public sealed record SizePlan(string Name, int Count, Grams FirstEach, Grams TopUpEach, string Gap)
{
    /// <summary>How many vessels make one that is sold, such as the cups of a box of tea lights.</summary>
    public int Pieces { get; init; } = 1;

    /// <summary>First pour into one of these.</summary>
    public Grams FirstInPiece => new(FirstEach.Value / Pieces);

    /// <summary>Second pour into one of these; zero when there is none.</summary>
    public Grams TopUpInPiece => new(TopUpEach.Value / Pieces);
}
