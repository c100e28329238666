namespace Chandlery.Intake.Pictures;

/// <summary>A piece of a page's picture.</summary>
/// <param name="Left">Where its left edge lies on the page, pixels.</param>
/// <param name="Top">Where its upper edge lies on the page, pixels.</param>
/// <param name="Picture">What it shows.</param>
internal sealed record PagePiece(int Left, int Top, GreyPicture Picture);
