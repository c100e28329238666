namespace Chandlery.Paper.Proofs.Reading;

/// <summary>What is printed on a page, as its PDF has it.</summary>
/// <param name="Width">Width, points.</param>
/// <param name="Height">Height, points.</param>
/// <param name="Letters">Its letters in the order of drawing.</param>
/// <param name="Areas">What is filled, in the order of drawing.</param>
internal sealed record PrintedPage(double Width, double Height, IReadOnlyList<PrintedLetter> Letters, IReadOnlyList<PrintedArea> Areas)
{
    /// <summary>Millimetres in a point.</summary>
    public const double MmPerPoint = 25.4 / 72;
}
