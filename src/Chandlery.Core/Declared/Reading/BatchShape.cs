using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a batch.</summary>
internal static class BatchShape
{
    public static readonly TextField Candle = new("candle", "The candle's file name without .yaml.", WaxShape.ReferenceExample)
    {
        Needed = true,
        Names = "candle",
    };
    public static readonly TextField Code = new("code", "Batch code on the label.", "HL-2611-03") { Needed = true };
    public static readonly DayField Poured = new("poured", "Day of pouring.") { Needed = true };

    public static readonly NumberField WaxWeight = new("waxGrams", "Grams of wax in the scented melt.", "4000", 0, PourShape.MostGrams);

    public static readonly GroupField Weighed = new(
        "weighed",
        "What was really weighed.",
        new Shape(
            "weighed",
            "What was really weighed.",
            [WaxWeight, CandleShape.BaseWeight, PourShape.WeighedOils, PourShape.WeighedExtras, PourShape.WeighedTopUp]
        )
        {
            Variants = Variant.OneOf(["waxGrams"], ["baseGrams"]),
        }
    )
    {
        Needed = true,
    };

    public static readonly NumberField Made = new("made", "How many candles came of it.", "12", 0, DispatchShape.MostPieces)
    {
        Whole = true,
        LowAllowed = true,
    };

    public static readonly TextsField Lots = new("lots", "The lots that went into it, by their files' names without .yaml.")
    {
        Names = "lot",
    };

    public static readonly Shape Batch = new(
        "batch",
        "What was really weighed for a batch",
        [Candle, Code, Poured, Made, Lots, Weighed, ConfirmedShape.Confirmed]
    );
}
