namespace Chandlery.Core.Declared;

/// <summary>Shapes that a maker may ask for.</summary>
public enum LabelForm
{
    /// <summary>A rectangle, with rounded corners where a corner radius is given.</summary>
    Rectangle,

    /// <summary>A circle, for a base or a lid.</summary>
    Circle,

    /// <summary>A ring around a hole.</summary>
    Ring,

    /// <summary>A band around the vessel; its length is the vessel's circumference.</summary>
    Band,

    /// <summary>A folded leaflet or tie-on tag: a front and an inside of the same size.</summary>
    Leaflet,

    /// <summary>A rectangle whose upper end is a half circle.</summary>
    Arch,

    /// <summary>A strip over the lid and down two sides; its length comes from the vessel.</summary>
    Strip,

    /// <summary>A cut line of the maker's own.</summary>
    Outline,
}
