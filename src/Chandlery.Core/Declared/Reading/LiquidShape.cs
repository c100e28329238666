using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of what was measured of a finished liquid.</summary>
internal static class LiquidShape
{
    public static readonly NumberField Density = new("densityGramsPerMl", "Density of the finished liquid, g/ml.", "0.86", 0, 25)
    {
        Needed = true,
    };

    public static readonly GroupField FlashPoint = new(
        OilShape.FlashPoint.Key,
        "Flash point of the finished liquid, closed cup, with its method. It is never reckoned from the parts: have it measured.",
        new Shape(
            "measuredFlashPoint",
            "A measured flash point.",
            [OilShape.Celsius, OilShape.AboveCelsius, OilShape.Method with { Needed = true }]
        )
        {
            Variants = Variant.OneOf(["celsius"], ["aboveCelsius"]),
        }
    );

    public static readonly NumberField Boiling = new(
        "boilingCelsius",
        "Initial boiling point of the finished liquid, °C.",
        "78",
        -100,
        500
    );

    public static readonly ChoiceField Combustion = new(
        "sustainedCombustion",
        "Result of the test L.2 for sustained combustion (UN Manual of Tests and Criteria, section 32).",
        ["negative", "positive"]
    );

    public static readonly NumberField Viscosity = new(
        "viscosityMm2PerSecond",
        "Kinematic viscosity at 40 °C, mm²/s.",
        "4.2",
        0,
        1_000_000
    );

    public static readonly FlagField Vapour = new(
        "formsFlammableVapour",
        "Whether it can form a flammable mixture of vapour and air in use, in the judgement of a competent person."
    );

    public static readonly EitherField Classes = new(
        "classes",
        "Physical hazard classes that a supplier or laboratory gives the finished liquid, or the words 'not classified'.",
        [
            new ChoiceField("", "", [IngredientShape.NotClassified]),
            new TextsField("", "Class, category and statement, such as 'Flam. Liq. 3, H226'.") { NotEmpty = true },
        ]
    );

    public static readonly TextField Document = new(
        "document",
        "The report or sheet that the figures stand in.",
        "report FL-118 of 2026-10-02"
    )
    {
        Needed = true,
    };

    public static readonly GroupField Liquid = new(
        "liquid",
        "What was measured of the finished liquid. Without its flash point, or its supplier's class, no label is printed.",
        new Shape(
            "liquid",
            "What was measured of a finished liquid.",
            [Density, FlashPoint, Boiling, Combustion, Viscosity, Vapour, Classes, Document]
        )
    );
}
