using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a label stock.</summary>
internal static class StockShape
{
    public static readonly ChoiceField Declares = new("declares", "", ["stock"]);
    public static readonly TextField Name = new("name", "Name.", "A4, two columns of four") { Needed = true };
    public static readonly GroupField Label = new("label", "One label of the stock.", LabelShape.Label) { Needed = true };

    public static readonly NumberField Bleed = new("bleedMm", "How far a background may run over the label's edge.", "2", 0, 10)
    {
        LowAllowed = true,
    };

    public static readonly NumberField PageWidth = Length("pageWidthMm", "Width of the page, mm.");
    public static readonly NumberField PageHeight = Length("pageHeightMm", "Height of the page, mm.");
    public static readonly NumberField Columns = new("columns", "Labels side by side.", "2", 1, 100)
    {
        Needed = true,
        LowAllowed = true,
        Whole = true,
    };
    public static readonly NumberField Rows = new("rows", "Labels above each other.", "4", 1, 200)
    {
        Needed = true,
        LowAllowed = true,
        Whole = true,
    };
    public static readonly NumberField Left = Length("leftMm", "Left edge of the first label.") with { LowAllowed = true };
    public static readonly NumberField Top = Length("topMm", "Upper edge of the first label.") with { LowAllowed = true };
    public static readonly NumberField PitchX = Length("pitchXMm", "From one left edge to the next.");
    public static readonly NumberField PitchY = Length("pitchYMm", "From one upper edge to the next.");

    public static readonly GroupField Sheet = new(
        "sheet",
        "The grid of a sheet.",
        new Shape("sheet", "The grid of a sheet.", [PageWidth, PageHeight, Columns, Rows, Left, Top, PitchX, PitchY])
    );

    public static readonly NumberField DotsPerInch = new("dotsPerInch", "Resolution of the printer.", "203", 72, 1200)
    {
        Needed = true,
        LowAllowed = true,
    };

    public static readonly GroupField Roll = new("roll", "A roll for a thermal printer.", new Shape("roll", "A roll.", [DotsPerInch]));

    public static readonly Shape Stock = new(
        "stock",
        "A label stock: sheets, or a roll for a thermal printer",
        [Name, Label, Bleed, Sheet, Roll]
    )
    {
        Variants = Variant.OneOf(["sheet"], ["roll"]),
    };

    private static NumberField Length(string key, string about) => new(key, about, "10", 0, 2000) { Needed = true };
}
