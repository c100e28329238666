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
    // Far more than figures are rounded by, far less than anybody sees.
    private const double LevelPoints = 0.01;

    /// <summary>The box around its outline, millimetres from the top left of the page; null for a blank.</summary>
    public Box? Outline { get; init; }

    /// <summary>True when its line runs level from left to right.</summary>
    public bool IsLevel { get; init; }

    /// <summary>Whether a letter's line runs level from left to right.</summary>
    /// <param name="along">How far it goes to the right over the letter's width, points.</param>
    /// <param name="up">How far it rises, points.</param>
    public static bool RunsLevel(double along, double up) => Math.Abs(up) < LevelPoints && along >= 0;
}
