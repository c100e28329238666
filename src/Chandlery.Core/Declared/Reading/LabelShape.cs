using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of the label that is asked for.</summary>
internal static class LabelShape
{
    public static readonly ChoiceField Form = new(
        "shape",
        "rectangle (default), circle or ring (base, lid), band (around the vessel), leaflet (fold-out or tie-on tag), arch (its upper end a half circle), strip (over the lid and down two sides), outline (a cut line of your own).",
        ["rectangle", "circle", "ring", "band", "leaflet", "arch", "strip", "outline"]
    );

    public static readonly NumberField Width = Side("widthMm", "Width of a rectangle, leaflet, arch or strip.", "74");
    public static readonly NumberField Height = Side(
        "heightMm",
        "Height of a rectangle, band, leaflet or arch; how far a strip comes down each side.",
        "105"
    );
    public static readonly NumberField Diameter = Side("diameterMm", "Diameter of a circle or ring.", "60");
    public static readonly NumberField Hole = new("holeMm", "Diameter of a ring's hole.", "20", 0, LongestMm);
    public static readonly NumberField Corner = new("cornerMm", "Corner radius of a rectangle.", "3", 0, 100) { LowAllowed = true };

    public static readonly TextsField Outline = new(
        "outlineMm",
        "Corners of an outline, right and up, one after the other around it: [0 0, 120 0, 60 100]."
    )
    {
        Pattern = VesselShape.Outline.Pattern,
        NotEmpty = true,
    };

    public static readonly TextField File = new(
        "file",
        "File with an outline beside this one: an SVG that gives its width and height in millimetres and has nothing but the cut line.",
        "tag.svg"
    )
    {
        Endings = [".svg"],
    };

    public const double ShortestMm = 5;
    public const double LongestMm = 1000;

    public static readonly Shape Label = new(
        "label",
        "A label's form and size.",
        [Form, Width, Height, Diameter, Hole, Corner, Outline, File]
    )
    {
        Variants =
        [
            Of(["rectangle"], ["widthMm", "heightMm"], ["diameterMm", "holeMm", "outlineMm", "file"]) with
            {
                IsDefault = true,
            },
            Of(["leaflet"], ["widthMm", "heightMm"], ["diameterMm", "holeMm", "cornerMm", "outlineMm", "file"]),
            Of(["strip"], ["widthMm", "heightMm"], ["diameterMm", "holeMm", "cornerMm", "outlineMm", "file"]),
            Of(["arch"], ["widthMm", "heightMm"], ["diameterMm", "holeMm", "cornerMm", "outlineMm", "file"]),
            Of(["band"], ["heightMm"], ["widthMm", "diameterMm", "holeMm", "cornerMm", "outlineMm", "file"]),
            Of(["circle"], ["diameterMm"], ["widthMm", "heightMm", "holeMm", "cornerMm", "outlineMm", "file"]),
            Of(["ring"], ["diameterMm", "holeMm"], ["widthMm", "heightMm", "cornerMm", "outlineMm", "file"]),
            Of(["outline"], [], ["widthMm", "heightMm", "diameterMm", "holeMm", "cornerMm"]),
        ],
    };

    private static NumberField Side(string key, string about, string example) =>
        new(key, about, example, ShortestMm, LongestMm) { LowAllowed = true };

    private static Variant Of(string[] forms, string[] needed, string[] without) =>
        new(needed, without) { ChosenBy = "shape", Values = forms };
}
