using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Symbols;

/// <summary>The solid sector of the dial that says for how long a candle may burn: the part of twelve hours.</summary>
internal static class HourDial
{
    private const double Middle = SymbolSheet.Units / 2;
    private const double Radius = 41;
    private const double HoursOfDial = 12;

    /// <summary>The sheet with the dial of a number of hours; from half a day on the dial is full.</summary>
    /// <param name="symbols">The drawings, the dial's ring among them.</param>
    /// <param name="hours">How long, in hours.</param>
    public static SymbolSheet On(SymbolSheet symbols, double hours)
    {
        SymbolName name = SymbolName.TryParse("longestBurn")!;
        var sector = new SymbolLayer(Sector(Math.Clamp(hours / HoursOfDial, 0, 0.9999)), Ink.Black, null, 0);
        return symbols with
        {
            Symbols = new Dictionary<SymbolName, IReadOnlyList<SymbolLayer>>(symbols.Symbols)
            {
                [name] = [sector, .. symbols.Symbols[name]],
            },
        };
    }

    private static string Sector(double share)
    {
        double angle = share * 2 * Math.PI;
        double x = Middle + (Radius * Math.Sin(angle));
        double y = Middle - (Radius * Math.Cos(angle));
        return FormattableString.Invariant(
            $"M{Middle} {Middle} L{Middle} {Middle - Radius} A{Radius} {Radius} 0 {(share > 0.5 ? 1 : 0)} 1 {x:0.##} {y:0.##} Z"
        );
    }
}
