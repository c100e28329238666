namespace Chandlery.Intake.Pictures;

/// <summary>Recognises the words of pictures.</summary>
/// <param name="pictures">A file with one picture after the other: the pieces of a page, as TIFF.</param>
/// <param name="dotsPerInch">Their resolution.</param>
/// <returns>
/// The words as tab-separated lines, as tesseract writes them, each with its picture's number; null when nothing could be recognised.
/// </returns>
public delegate string? PictureReader(byte[] pictures, int dotsPerInch);
