using Chandlery.Paper.Fonts;

namespace Chandlery.Paper.Designs;

/// <summary>
/// A line that gets smaller where it is too long, and loses its last words where even the smallest type is, of a list the last of its
/// things: a front tells what it can, the legal panel tells all.
/// </summary>
/// <param name="Text">What is left of it.</param>
/// <param name="SizeMm">Type size.</param>
internal readonly record struct FittingText(string Text, double SizeMm)
{
    // Under this type can be read no more (6 points reversed, 5.4 in black; common practice of printers, no source).
    private const double SmallestTypeMm = 1.9;
    private const double Tolerance = 0.999;

    /// <summary>The line in a room.</summary>
    /// <param name="text">The text.</param>
    /// <param name="face">The face.</param>
    /// <param name="wantedMm">Type size that is wanted.</param>
    /// <param name="roomMm">Width of the room.</param>
    public static FittingText Of(string text, Face face, double wantedMm, double roomMm)
    {
        string left = text;
        while (left.Contains(' ', StringComparison.Ordinal) && Fitting(left) < SmallestTypeMm * Tolerance)
        {
            // Half of a thing's name is the name of another.
            int comma = left.LastIndexOf(", ", StringComparison.Ordinal);
            left = left[..(comma > 0 ? comma : left.LastIndexOf(' '))];
        }

        return new FittingText(left, Math.Max(SmallestTypeMm, Fitting(left)));

        double Fitting(string line) => Math.Min(wantedMm, roomMm / WidthEm(line, face));
    }

    /// <summary>The whole line, however small it gets: nobody's name is cut.</summary>
    /// <param name="text">The text.</param>
    /// <param name="face">The face.</param>
    /// <param name="wantedMm">Type size that is wanted.</param>
    /// <param name="roomMm">Width of the room.</param>
    public static FittingText Whole(string text, Face face, double wantedMm, double roomMm) =>
        new(text, Math.Min(wantedMm, roomMm / WidthEm(text, face)));

    private static double WidthEm(string text, Face face) => Math.Max(0.01, (double)face.Shape(text).Advance / face.UnitsPerEm);
}
