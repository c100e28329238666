using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of the label that is asked for.</summary>
internal static class LabelShape
{
    public static readonly ChoiceField Form = new(
        "shape",
        "rectangle (default), circle or ring (base, lid), band (around the vessel), leaflet (fold-out or tie-on tag).",
        ["rectangle", "circle", "ring", "band", "leaflet"]
    );

    public static readonly NumberField Width = Side("widthMm", "Width of a rectangle or leaflet.", "74");
    public static readonly NumberField Height = Side("heightMm", "Height of a rectangle, band or leaflet.", "105");
    public static readonly NumberField Diameter = Side("diameterMm", "Diameter of a circle or ring.", "60");
    public static readonly NumberField Hole = new("holeMm", "Diameter of a ring's hole.", "20", 0, LongestMm);
    public static readonly NumberField Corner = new("cornerMm", "Corner radius of a rectangle.", "3", 0, 100) { LowAllowed = true };

    private const double LongestMm = 1000;

    public static readonly Shape Label = new("label", "A label's form and size.", [Form, Width, Height, Diameter, Hole, Corner])
    {
        Variants =
        [
            Of(["rectangle"], ["widthMm", "heightMm"], ["diameterMm", "holeMm"]) with
            {
                IsDefault = true,
            },
            Of(["leaflet"], ["widthMm", "heightMm"], ["diameterMm", "holeMm", "cornerMm"]),
            Of(["band"], ["heightMm"], ["widthMm", "diameterMm", "holeMm", "cornerMm"]),
            Of(["circle"], ["diameterMm"], ["widthMm", "heightMm", "holeMm", "cornerMm"]),
            Of(["ring"], ["diameterMm", "holeMm"], ["widthMm", "heightMm", "cornerMm"]),
        ],
    };

    private static NumberField Side(string key, string about, string example) =>
        new(key, about, example, 5, LongestMm) { LowAllowed = true };

    private static Variant Of(string[] forms, string[] needed, string[] without) =>
        new(needed, without) { ChosenBy = "shape", Values = forms };
}
