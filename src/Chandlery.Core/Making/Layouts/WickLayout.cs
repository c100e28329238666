using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making.Layouts;

/// <summary>Where wicks stand.</summary>
/// <param name="Wicks">Their places on the floor.</param>
/// <param name="Neighbours">The distance of the two that stand closest; null for a single wick.</param>
/// <param name="Wall">The distance of the one that stands closest to the wall.</param>
public sealed record WickLayout(IReadOnlyList<FloorPoint> Wicks, Millimetres? Neighbours, Millimetres Wall)
{
    /// <summary>The largest circle that is free around every wick: half the way to a neighbour, all the way to the wall.</summary>
    public Millimetres FreeRadius => new(Math.Min(Wall.Value, Neighbours is { } apart ? apart.Value / 2 : double.PositiveInfinity));

    /// <summary>A layout of places, measured.</summary>
    public static WickLayout Of(Floor floor, IReadOnlyList<FloorPoint> wicks)
    {
        double apart = double.PositiveInfinity;
        for (int i = 0; i < wicks.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                apart = Math.Min(apart, wicks[i].To(wicks[j]));
            }
        }

        double wall = wicks.Min(floor.ToWall);
        return new WickLayout(wicks, wicks.Count > 1 ? new Millimetres(apart) : null, new Millimetres(wall));
    }
}
