using Chandlery.Paper.Designs;

namespace Chandlery.Paper.Proofs.Reading;

/// <summary>A letter as a PDF has it, points from the lower left of the page.</summary>
/// <param name="Value">What it means.</param>
/// <param name="X">Where it begins on its baseline.</param>
/// <param name="Y">Its baseline.</param>
/// <param name="EndX">Where the next one would begin.</param>
/// <param name="Height">Height of its outline.</param>
/// <param name="Colour">Its colour.</param>
internal sealed record PrintedLetter(string Value, double X, double Y, double EndX, double Height, PrintedColour Colour)
{
    /// <summary>The box around its outline, millimetres from the top left of the page; null for a blank.</summary>
    public Box? Outline { get; init; }

    /// <summary>True when its line runs level from left to right.</summary>
    public bool IsLevel { get; init; }
}
