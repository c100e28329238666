using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Pdf;

/// <summary>Inks as screens show them.</summary>
internal sealed class ScreenPalette : IPalette
{
    private readonly Dictionary<(byte, byte, byte), Paint> paints = [];

    /// <inheritdoc/>
    public string PictureSpace => "/DeviceRGB";

    /// <inheritdoc/>
    public void Take(Ink ink)
    {
        if (!paints.ContainsKey((ink.Red, ink.Green, ink.Blue)))
        {
            var numbers = new ByteText();
            foreach (byte part in new[] { ink.Red, ink.Green, ink.Blue })
            {
                numbers.Spaced(part / 255.0, 3);
            }

            string shares = System.Text.Encoding.ASCII.GetString(numbers.Written);
            paints[(ink.Red, ink.Green, ink.Blue)] = new Paint($"{shares}rg\n", $"{shares}RG\n", false);
        }
    }

    /// <inheritdoc/>
    public Paint Of(Ink ink) => paints[(ink.Red, ink.Green, ink.Blue)];

    /// <inheritdoc/>
    public Paint OfText(Ink ink) => Of(ink);

    /// <inheritdoc/>
    public byte[] Pixels(PixelGrid grid) => grid.Rgb;

    /// <inheritdoc/>
    public string Resources(PdfFile file) => "";
}
