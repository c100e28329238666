using System.Text;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Pdf;

/// <summary>
/// Inks as a press prints them: process inks, and spot inks on plates of their own (ISO 32000-1, 8.6.6.4). Letters in black ink alone
/// overprint, so that no white edge shows where plates do not meet.
/// </summary>
internal sealed class PressPalette : IPalette
{
    private const double Percent = 100;

    // The parts of the graphics state that say whether what lies below is kept (ISO 32000-1, 8.6.7). Mode 1 is what keeps it for
    // process inks: those of which nothing is printed stay as they are.
    private const string States =
        "/ExtGState<</Over<</Type/ExtGState/OP true/op true/OPM 1>>/Apart<</Type/ExtGState/OP false/op false/OPM 0>>>>";

    private readonly Dictionary<Ink, Paint> paints = [];
    private readonly List<Ink> spots = [];

    /// <inheritdoc/>
    public string PictureSpace => "/DeviceCMYK";

    /// <inheritdoc/>
    public void Take(Ink ink)
    {
        if (paints.ContainsKey(ink))
        {
            return;
        }

        if (ink.Spot is null)
        {
            string parts = Parts(ink.Process);
            paints[ink] = new Paint($"{parts}k\n", $"{parts}K\n", ink.Overprints);
            return;
        }

        int spot = spots.FindIndex(s => s.Spot == ink.Spot);
        if (spot < 0)
        {
            spot = spots.Count;
            spots.Add(ink);
        }

        paints[ink] = new Paint($"/S{spot} cs 1 scn\n", $"/S{spot} CS 1 SCN\n", ink.Overprints);
    }

    /// <inheritdoc/>
    public Paint Of(Ink ink) => paints[ink];

    /// <inheritdoc/>
    public Paint OfText(Ink ink) =>
        ink is { Spot: null, Process: { Cyan: 0, Magenta: 0, Yellow: 0, Key: Percent } }
            ? paints[ink] with
            {
                Overprints = true,
            }
            : paints[ink];

    /// <inheritdoc/>
    public byte[] Pixels(PixelGrid grid)
    {
        var pixels = new byte[grid.Width * grid.Height * 4];
        for (int i = 0, from = 0; i < pixels.Length; i += 4, from += 3)
        {
            var inks = Cmyk.OfRgb(grid.Rgb[from], grid.Rgb[from + 1], grid.Rgb[from + 2]);
            pixels[i] = Share(inks.Cyan);
            pixels[i + 1] = Share(inks.Magenta);
            pixels[i + 2] = Share(inks.Yellow);
            pixels[i + 3] = Share(inks.Key);
        }

        return pixels;
    }

    /// <inheritdoc/>
    public string Resources(PdfFile file)
    {
        var spaces = new StringBuilder();
        for (int i = 0; i < spots.Count; i++)
        {
            int space = file.Add(
                new ByteText()
                    .Put($"[/Separation{PdfText.Name(spots[i].Spot!)}/DeviceCMYK<</FunctionType 2/Domain[0 1]/N 1/C0[0 0 0 0]/C1[")
                    .Put(Parts(spots[i].Process))
                    .Put("]>>]")
            );
            spaces.Append(System.Globalization.CultureInfo.InvariantCulture, $"/S{i} {space} 0 R");
        }

        return spots.Count > 0 ? $"{States}/ColorSpace<<{spaces}>>" : States;
    }

    private static byte Share(double percent) => (byte)Math.Round(percent / Percent * byte.MaxValue);

    private static string Parts(Cmyk inks)
    {
        var parts = new ByteText();
        foreach (double part in new[] { inks.Cyan, inks.Magenta, inks.Yellow, inks.Key })
        {
            parts.Spaced(part / Percent, 4);
        }

        return Encoding.ASCII.GetString(parts.Written);
    }
}
