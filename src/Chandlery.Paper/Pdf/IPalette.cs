using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Pdf;

/// <summary>How inks and pixels are written for a purpose. All inks are taken first; after that it may be asked from several threads.</summary>
internal interface IPalette
{
    /// <summary>The colour space of pictures.</summary>
    string PictureSpace { get; }

    /// <summary>Takes an ink into use.</summary>
    void Take(Ink ink);

    /// <summary>An ink of areas and lines that was taken.</summary>
    Paint Of(Ink ink);

    /// <summary>An ink of letters that was taken.</summary>
    Paint OfText(Ink ink);

    /// <summary>Pixels in the space of pictures, row by row.</summary>
    byte[] Pixels(PixelGrid grid);

    /// <summary>Entries of the resource dictionary that the inks need.</summary>
    /// <param name="file">Receives the objects behind them.</param>
    string Resources(PdfFile file);
}
