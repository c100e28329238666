using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Labelled;

/// <summary>The figures in the burn-safety messages, from the vessel and the wicks (common practice; see <c>data/burning.yaml</c>).</summary>
public static class BurnFigures
{
    /// <summary>Values for the marks in the messages.</summary>
    public static IReadOnlyDictionary<string, string> Of(Candle candle, Vessel vessel, BurnAdvice advice, FigureFormat figures)
    {
        double distance = candle.Use == CandleUse.Outdoor ? advice.OutdoorDistanceCm : advice.IndoorDistanceCm;
        double first = FirstBurnHours(candle, vessel, advice);
        double longest = LongestBurnHours(candle, vessel, advice);
        return new Dictionary<string, string>
        {
            ["distanceCm"] = figures.Declared(distance),
            ["trimMm"] = figures.Declared(candle.Wicks.TrimTo.Value),
            ["wicks"] = candle.Wicks.Count.ToString(System.Globalization.CultureInfo.InvariantCulture),
            ["firstHours"] = figures.Declared(first),
            ["longestHours"] = figures.Declared(longest),
            ["remainingMm"] = figures.Declared(advice.RemainingWaxMm),
        };
    }

    /// <summary>For how many hours it may burn at a time: never less than its first burn needs.</summary>
    public static double LongestBurnHours(Candle candle, Vessel vessel, BurnAdvice advice) =>
        Math.Max(FirstBurnHours(candle, vessel, advice), advice.LongestBurnHours);

    /// <summary>A message with its figures.</summary>
    public static string Fill(string message, IReadOnlyDictionary<string, string> figures)
    {
        foreach ((string mark, string value) in figures)
        {
            message = message.Replace("{" + mark + "}", value, StringComparison.Ordinal);
        }

        return message;
    }

    // Each wick melts its own part of the surface: the width of that part decides how long the first burn takes.
    private static double FirstBurnHours(Candle candle, Vessel vessel, BurnAdvice advice)
    {
        if (candle.Wicks.Count == 0)
        {
            return 0;
        }

        double areaMm2 = vessel.Inner?.Section.AreaSquareMillimetres ?? vessel.Outer?.Section.AreaSquareMillimetres / vessel.Pieces ?? 0;
        double widthPerWickCm = 2 * Math.Sqrt(areaMm2 / candle.Wicks.Count / Math.PI) / 10;
        return Math.Max(1, Math.Ceiling(widthPerWickCm * advice.FirstBurnHoursPerCm));
    }
}
