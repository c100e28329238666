using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a wax.</summary>
internal static class WaxShape
{
    public static readonly TextField Name = new("name", "Trade name.", "Soft container blend") { Needed = true };
    public static readonly TextField Supplier = new("supplier", "Who sells it.", "the name on the sheet") { Needed = true };
    public static readonly TextField Part = new("wax", "The other wax's file name without .yaml.", ReferenceExample)
    {
        Needed = true,
        Names = "wax",
    };
    public static readonly NumberField Percent = new("percent", "Share of the blend.", "60", 0, 100) { Needed = true };

    public static readonly GroupsField Blend = new(
        "blend",
        "The waxes that it is mixed from.",
        new Shape("waxPart", "A wax of a blend.", [Part, Percent])
    )
    {
        NotEmpty = true,
    };

    public static readonly GroupField HighestLoad = new("highestLoad", "The most that its supplier allows.", LoadShape.Load);
    public static readonly NumberField SolidDensity = new("solidDensityGramsPerMl", "g/ml, cold.", "0.9", 0, 25);
    public static readonly NumberField LiquidDensity = new("liquidDensityGramsPerMl", "g/ml, molten.", "0.85", 0, 25);

    public static readonly NumberField Melting = new(
        "meltingCelsius",
        "Melting point in degrees Celsius, as the supplier gives it.",
        "52",
        0,
        200
    );

    /// <summary>What is said where another file is to be named.</summary>
    public const string ReferenceExample = "the other file's name without .yaml";

    public static readonly Shape Wax = new(
        "wax",
        "A wax or a blend of waxes",
        [
            Name,
            Supplier,
            IngredientShape.Table,
            Blend,
            HighestLoad,
            SolidDensity,
            LiquidDensity,
            Melting,
            .. NotifiedShape.Source,
            ConfirmedShape.Confirmed,
        ]
    )
    {
        Variants = Variant.OneOf(["ingredients"], ["blend"]),
    };
}
