using System.Globalization;

namespace Chandlery.Paper.Scenes;

/// <summary>A colour: as screens show it, and as a press prints it.</summary>
/// <param name="Red">Red of sRGB.</param>
/// <param name="Green">Green of sRGB.</param>
/// <param name="Blue">Blue of sRGB.</param>
/// <param name="Process">Process inks.</param>
/// <param name="Spot">Name of a spot ink that is printed instead of process inks; null for none.</param>
public sealed record Ink(byte Red, byte Green, byte Blue, Cmyk Process, string? Spot = null)
{
    /// <summary>Black, as black ink alone: text in four inks would show a coloured edge where plates do not meet.</summary>
    public static Ink Black { get; } = new(0, 0, 0, new Cmyk(0, 0, 0, 100));

    /// <summary>White: nothing is printed.</summary>
    public static Ink White { get; } = new(255, 255, 255, default);

    /// <summary>The red of hazard pictograms, and of what must be seen.</summary>
    public static Ink SignalRed { get; } = new(0xE3, 0x00, 0x0F, new Cmyk(0, 100, 100, 0));

    /// <summary>A grey for lines that carry no meaning.</summary>
    public static Ink Grey { get; } = new(0x80, 0x80, 0x80, new Cmyk(0, 0, 0, 50));

    /// <summary>The outline along which a label is cut: an ink of its own that overprints, in the press file only.</summary>
    public static Ink CutLine { get; } = new(0xFF, 0x00, 0xFF, new Cmyk(0, 100, 0, 0), "CutLine") { Overprints = true };

    /// <summary>
    /// Whether a press prints it over what lies below without leaving that out: varnish, foil, a cut line. Otherwise what it covers
    /// is left out on the other plates.
    /// </summary>
    public bool Overprints { get; init; }

    /// <summary>White for black, black for white, and every other ink as it is.</summary>
    public Ink Reversed =>
        this == Black ? White
        : this == White ? Black
        : this;

    /// <summary>How bright it looks, 0 (black) to 1 (white): relative luminance of sRGB (IEC 61966-2-1).</summary>
    public double Luminance => (0.2126 * Linear(Red)) + (0.7152 * Linear(Green)) + (0.0722 * Linear(Blue));

    /// <summary>The colour as <c>#RRGGBB</c>.</summary>
    public string Hex => FormattableString.Invariant($"#{Red:X2}{Green:X2}{Blue:X2}");

    /// <summary>A colour of the screen with process inks by plain arithmetic.</summary>
    /// <param name="hex">Six hexadecimal figures, with or without #.</param>
    /// <exception cref="FormatException">The text is no such colour.</exception>
    public static Ink Of(string hex)
    {
        string figures = hex.TrimStart('#');
        if (figures.Length != 6)
        {
            throw new FormatException($"'{hex}' is no colour");
        }

        byte red = Byte(figures[..2]);
        byte green = Byte(figures[2..4]);
        byte blue = Byte(figures[4..]);
        return new Ink(red, green, blue, Cmyk.OfRgb(red, green, blue));
    }

    /// <summary>Contrast of two colours, 1 to 21 (WCAG 2.2, relative luminance).</summary>
    public static double Contrast(Ink one, Ink other)
    {
        double light = Math.Max(one.Luminance, other.Luminance);
        double dark = Math.Min(one.Luminance, other.Luminance);
        return (light + 0.05) / (dark + 0.05);
    }

    /// <summary>A colour on the way to another, without spot ink.</summary>
    /// <param name="other">Where the way leads.</param>
    /// <param name="share">How far, 0 to 1.</param>
    public Ink Towards(Ink other, double share) =>
        new(
            (byte)Math.Round(Red + ((other.Red - Red) * share)),
            (byte)Math.Round(Green + ((other.Green - Green) * share)),
            (byte)Math.Round(Blue + ((other.Blue - Blue) * share)),
            new Cmyk(
                Process.Cyan + ((other.Process.Cyan - Process.Cyan) * share),
                Process.Magenta + ((other.Process.Magenta - Process.Magenta) * share),
                Process.Yellow + ((other.Process.Yellow - Process.Yellow) * share),
                Process.Key + ((other.Process.Key - Process.Key) * share)
            )
        );

    private static byte Byte(string figures) => byte.Parse(figures, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);

    private static double Linear(byte value)
    {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4);
    }
}
