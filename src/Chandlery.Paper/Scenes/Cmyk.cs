namespace Chandlery.Paper.Scenes;

/// <summary>What a press prints with its four process inks, each in percent of full cover, 0 to 100.</summary>
/// <param name="Cyan">Cyan.</param>
/// <param name="Magenta">Magenta.</param>
/// <param name="Yellow">Yellow.</param>
/// <param name="Key">Black.</param>
public readonly record struct Cmyk(double Cyan, double Magenta, double Yellow, double Key)
{
    /// <summary>All four together, percent: presses refuse more than about 300.</summary>
    public double Total => Cyan + Magenta + Yellow + Key;

    /// <summary>
    /// Process inks for a colour of the screen, by plain arithmetic: the grey part goes to black. It is no profile's
    /// conversion; whoever needs a certain shade declares its inks.
    /// </summary>
    public static Cmyk OfRgb(byte red, byte green, byte blue)
    {
        double most = Math.Max(red, Math.Max(green, blue)) / 255.0;
        return most == 0
            ? new Cmyk(0, 0, 0, 100)
            : new Cmyk(Share(red / 255.0, most), Share(green / 255.0, most), Share(blue / 255.0, most), Math.Round(100 * (1 - most)));
    }

    private static double Share(double part, double most) => Math.Round(100 * (most - part) / most);
}
