using System.Collections.Concurrent;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Making.Layouts;

namespace Chandlery.Workbench.Desks;

/// <summary>The vessel from above with its wicks, to scale.</summary>
/// <param name="Wall">Corners of its inside, millimetres; empty for a round one.</param>
/// <param name="Radius">Radius of a round inside, millimetres; zero for another.</param>
/// <param name="Free">Radius of the circle that is free around every wick, millimetres.</param>
/// <param name="Wicks">Where they stand, right and up, millimetres.</param>
internal sealed record WickDrawing(IReadOnlyList<double[]> Wall, double Radius, double Free, IReadOnlyList<double[]> Wicks)
{
    // A layout takes longer than all else that a keystroke asks for, and the same vessel is asked for with every one.
    private static readonly ConcurrentDictionary<(CrossSection, int), WickDrawing> Known = new();

    private const int MostKnown = 200;

    /// <summary>The drawing; null where the vessel's inside is not declared, and for what has no wicks.</summary>
    public static WickDrawing? Of(Assessment a)
    {
        if (a.Vessel.Inner is not { } inner || a.Candle.Wicks.Count == 0)
        {
            return null;
        }

        if (Known.Count > MostKnown)
        {
            Known.Clear();
        }

        return Known.GetOrAdd((inner.Section, a.Candle.Wicks.Count), key => Of(Floor.Of(key.Item1), key.Item2));
    }

    private static WickDrawing Of(Floor floor, int count)
    {
        WickLayout layout = LayoutFinder.Best(floor, count);
        return new WickDrawing(
            floor is CorneredFloor cornered ? [.. cornered.Corners.Select(Pair)] : [],
            floor is RoundFloor round ? round.RadiusMm : 0,
            layout.FreeRadius.Value,
            [.. layout.Wicks.Select(Pair)]
        );
    }

    private static double[] Pair(FloorPoint point) => [point.XMm, point.YMm];
}
