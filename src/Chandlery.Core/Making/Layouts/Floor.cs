using Chandlery.Core.Declared;

namespace Chandlery.Core.Making.Layouts;

/// <summary>The floor of a vessel seen from above: a <see cref="RoundFloor"/> or a <see cref="CorneredFloor"/>.</summary>
public abstract record Floor
{
    private protected Floor() { }

    /// <summary>The floor inside a wall of this cross-section. A round one has its middle at the origin, one with sides its lower left corner.</summary>
    public static Floor Of(CrossSection section) =>
        section switch
        {
            RoundSection round => new RoundFloor(round.Diameter.Value / 2),
            RectangularSection sides => new CorneredFloor([
                new FloorPoint(0, 0),
                new FloorPoint(sides.Length.Value, 0),
                new FloorPoint(sides.Length.Value, sides.Width.Value),
                new FloorPoint(0, sides.Width.Value),
            ]),
            OutlineSection outline => new CorneredFloor([.. outline.Corners.Select(c => new FloorPoint(c.X.Value, c.Y.Value))]),
            _ => throw new ArgumentException($"A section of the kind {section.GetType().Name} has no floor.", nameof(section)),
        };

    /// <summary>Its area, square millimetres.</summary>
    public abstract double AreaSquareMm { get; }

    /// <summary>Its lowest and leftmost place.</summary>
    public abstract FloorPoint Lowest { get; }

    /// <summary>Its highest and rightmost place.</summary>
    public abstract FloorPoint Highest { get; }

    /// <summary>How many walls there are.</summary>
    internal abstract int WallCount { get; }

    /// <summary>Says how far each wall is from a place, and which way leads straight away from it; negative outside.</summary>
    /// <param name="at">The place.</param>
    /// <param name="into">Where to write it, <see cref="WallCount"/> long.</param>
    internal abstract void Measure(FloorPoint at, Span<WallDistance> into);

    /// <summary>How far the nearest wall is from a place, millimetres; negative outside.</summary>
    internal double ToWall(FloorPoint at)
    {
        var walls = new WallDistance[WallCount];
        Measure(at, walls);
        return walls.Min(w => w.Mm);
    }
}
