using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of what goes into a melt: oils, extras and a second pour, as planned or as weighed.</summary>
internal static class PourShape
{
    public static readonly TextField Oil = new("oil", "The oil's file name without .yaml.", WaxShape.ReferenceExample)
    {
        Needed = true,
        Names = "oil",
    };
    public static readonly NumberField Share = new("share", "Percent of the oil blend.", "40", 0, 100);
    public static readonly NumberField Grams = new("grams", "Grams.", "40", 0, MostGrams);
    public static readonly NumberField Millilitres = new("millilitres", "Millilitres; needs the oil's density.", "40", 0, MostGrams);
    public static readonly NumberField Drops = new("drops", "Drops; needs the oil's drop mass.", "40", 0, MostGrams);
    public static readonly TextField Extra = new("extra", "The extra's file name without .yaml.", WaxShape.ReferenceExample)
    {
        Needed = true,
        Names = "extra",
    };
    public static readonly NumberField PercentOfWax = new("percentOfWax", "Percent of the wax in the scented melt.", "1", 0, 100);

    public static readonly FlagField Scented = new("scented", "yes: from the same scented melt, dilutes nothing. no: plain wax, dilutes.")
    {
        Needed = true,
    };

    public static readonly NumberField PercentOfCandle = new("percentOfCandle", "Share of the finished candle.", "10", 0, 90);

    public static readonly GroupsField Oils = new(
        "oils",
        "The oil blend.",
        new Shape("oilPart", "An oil of a blend.", [Oil, Share, Grams, Millilitres, Drops])
        {
            Variants = Variant.OneOf(["share"], ["grams"], ["millilitres"], ["drops"]),
        }
    );

    public static readonly GroupsField WeighedOils = new(
        "oils",
        "The oils as weighed; an empty list when there were none.",
        new Shape("weighedOil", "An oil as weighed.", [Oil, Grams, Millilitres, Drops])
        {
            Variants = Variant.OneOf(["grams"], ["millilitres"], ["drops"]),
        }
    )
    {
        Needed = true,
    };

    public static readonly GroupsField Extras = new(
        "extras",
        "Dyes and other additives.",
        new Shape("extraPart", "An extra of a candle.", [Extra, PercentOfWax, Grams])
        {
            Variants = Variant.OneOf(["percentOfWax"], ["grams"]),
        }
    );

    public static readonly GroupsField WeighedExtras = new(
        "extras",
        "Dyes and other additives as weighed.",
        new Shape("weighedExtra", "An extra as weighed.", [Extra, Grams with { Needed = true }])
    );

    public static readonly GroupField TopUp = new(
        "topUp",
        "A second pour.",
        new Shape("topUp", "A second pour.", [Scented, PercentOfCandle, Grams])
        {
            Variants =
            [
                new Variant([], []) { ChosenBy = "scented", Values = ["yes"] },
                new Variant(["percentOfCandle"], ["grams"]) { ChosenBy = "scented", Values = ["no"] },
                new Variant(["grams"], ["percentOfCandle"]) { ChosenBy = "scented", Values = ["no"] },
            ],
        }
    );

    public static readonly GroupField WeighedTopUp = new(
        "topUp",
        "A second pour as weighed.",
        new Shape("weighedTopUp", "A second pour as weighed.", [Scented, PercentOfCandle, Grams])
        {
            Variants =
            [
                new Variant([], []) { ChosenBy = "scented", Values = ["yes"] },
                new Variant(["grams"], ["percentOfCandle"]) { ChosenBy = "scented", Values = ["no"] },
            ],
        }
    );

    /// <summary>More grams than any one pour.</summary>
    public const double MostGrams = 10_000_000;
}
