using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a lot.</summary>
internal static class LotShape
{
    public static readonly TextField Oil = Bought("oil", "The oil's file name without .yaml.");
    public static readonly TextField Wax = Bought("wax", "The wax's file name without .yaml.");
    public static readonly TextField Extra = Bought("extra", "The extra's file name without .yaml.");
    public static readonly TextField Vessel = Bought("vessel", "The vessel's file name without .yaml.");
    public static readonly TextField Wick = new("wick", "Kind of the wicks, as the candles name it.", "cotton 6");
    public static readonly TextField Packaging = new("packaging", "Part of the packaging, as the candles name it.", "box");
    public static readonly TextField Code = new("code", "The supplier's lot code.", "L-2611-7") { Needed = true };
    public static readonly DayField Day = new("bought", "Day of purchase.") { Needed = true };
    public static readonly TextField From = new("from", "From whom.", "the name on the invoice") { Needed = true };
    public static readonly TextField Document = new("document", "Delivery note, certificate or sheet that came with it.", "DN 4711");
    public static readonly NumberField Grams = new("grams", "How much, g.", "5000", 0, PourShape.MostGrams);
    public static readonly NumberField Pieces = new("pieces", "How many.", "48", 0, DispatchShape.MostPieces) { Whole = true };

    public static readonly NumberField Paid = new("paid", "What all of it cost, in your currency.", "48.50", 0, MostMoney)
    {
        LowAllowed = true,
    };
    public static readonly DayField BestBefore = new("bestBefore", "The day until which it is best.");

    private const double MostMoney = 10_000_000;

    /// <summary>What can be bought, in the order of the kinds.</summary>
    public static readonly IReadOnlyList<TextField> Contents = [Oil, Wax, Extra, Vessel, Wick, Packaging];

    public static readonly Shape Lot = new(
        "lot",
        "What was bought at once of one material",
        [.. Contents, Code, Day, From, Document, Grams, Pieces, Paid, BestBefore]
    )
    {
        Variants = Variant.OneOf(["oil"], ["wax"], ["extra"], ["vessel"], ["wick"], ["packaging"]),
    };

    private static TextField Bought(string key, string about) => new(key, about, WaxShape.ReferenceExample) { Names = key };
}
