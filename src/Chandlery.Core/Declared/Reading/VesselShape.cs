using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a vessel.</summary>
internal static class VesselShape
{
    public static readonly TextField Name = new("name", "Name.", "Straight jar") { Needed = true };
    public static readonly TextField Material = new("material", "Material.", "glass") { Needed = true };

    public static readonly NumberField Brimful = new(
        "brimfulMl",
        "Volume to the brim, ml: the capacity that decides the label's size.",
        "300",
        0,
        100_000
    )
    {
        Needed = true,
    };

    public static readonly NumberField Fill = new("fillMl", "Volume to the fill line, ml.", "270", 0, 100_000);
    public static readonly NumberField Pieces = new(
        "pieces",
        "How many cups it is made of, each with wicks of its own; left out: one. Volumes and the outer size are those of all together, the inner size that of one.",
        "12",
        1,
        1000
    )
    {
        LowAllowed = true,
        Whole = true,
    };

    public static readonly NumberField Diameter = new("diameterMm", "Diameter of a round vessel.", "80", 0, LongestMm);
    public static readonly NumberField Length = new("lengthMm", "Long side.", "80", 0, LongestMm);
    public static readonly NumberField Width = new("widthMm", "Short side.", "80", 0, LongestMm);
    public static readonly NumberField Height = new("heightMm", "Height.", "90", 0, LongestMm) { Needed = true };

    public static readonly TextsField Outline = new(
        "outlineMm",
        "Corners of any other outline, right and up, one after the other around it: [0 0, 120 0, 60 100]."
    )
    {
        Pattern = "^ *[0-9]+([.][0-9]+)? +[0-9]+([.][0-9]+)? *$",
        NotEmpty = true,
    };

    public static readonly GroupField Inner = new(
        "inner",
        "Size of the inside.",
        new Shape(
            "innerSize",
            "A size in millimetres: round, with two sides, or of any outline.",
            [Diameter, Length, Width, Outline, Height]
        )
        {
            Variants = Variant.OneOf(["diameterMm"], ["lengthMm", "widthMm"], ["outlineMm"]),
        }
    );

    public static readonly Shape Size = new(
        "vesselSize",
        "A size in millimetres, round or with two sides.",
        [Diameter, Length, Width, Height]
    )
    {
        Variants = Variant.OneOf(["diameterMm"], ["lengthMm", "widthMm"]),
    };

    public static readonly GroupField Outer = new("outer", "Size of the outside.", Size);

    public static readonly FlagField ChildResistant = new(
        "childResistant",
        "yes: its closure is child-resistant by test (EN ISO 8317, or EN 862 where it does not close again)."
    );

    public static readonly FlagField TactileWarning = new("tactileWarning", "yes: it bears a warning that can be felt (EN ISO 11683).");

    public const double LongestMm = 5000;

    public static readonly Shape Vessel = new(
        "vessel",
        "What the candle is poured into",
        [Name, Material, Pieces, Brimful, Fill, Inner, Outer, ChildResistant, TactileWarning, ConfirmedShape.Confirmed]
    );
}
