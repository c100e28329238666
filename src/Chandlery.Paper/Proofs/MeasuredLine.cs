using Chandlery.Paper.Designs;

namespace Chandlery.Paper.Proofs;

/// <summary>A line of text as a PDF has it.</summary>
/// <param name="Text">The text.</param>
/// <param name="BaselineMm">Baseline, millimetres from the top of the page.</param>
/// <param name="XHeightMm">Height of its lower-case x-like letters, millimetres; null when it has none.</param>
/// <param name="FigureMm">Height of its smallest figure; null when it has none.</param>
/// <param name="IsBlack">True when every letter is black.</param>
public sealed record MeasuredLine(string Text, double BaselineMm, double? XHeightMm, double? FigureMm, bool IsBlack)
{
    /// <summary>Where it begins, millimetres from the left.</summary>
    public double LeftMm { get; init; }

    /// <summary>Where it ends.</summary>
    public double RightMm { get; init; }

    /// <summary>True when it runs level from left to right.</summary>
    public bool IsLevel { get; init; }

    /// <summary>The boxes around its letters, millimetres from the top left of the page.</summary>
    public IReadOnlyList<Box> Letters { get; init; } = [];
}
