namespace Chandlery.Intake.Pages;

/// <summary>Recognises the words of a picture of a page.</summary>
/// <param name="picture">The picture's file, PNG or JPEG.</param>
/// <param name="dotsPerInch">Its resolution.</param>
/// <returns>The words as tab-separated lines, as tesseract writes them; null when nothing could be recognised.</returns>
public delegate string? PictureReader(byte[] picture, int dotsPerInch);
