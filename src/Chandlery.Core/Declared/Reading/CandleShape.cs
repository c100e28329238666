using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a candle.</summary>
internal static class CandleShape
{
    public static readonly TextField Name = new("name", "Trade name.", "Harbour Light") { Needed = true };
    public static readonly TextField Kind = new(
        "kind",
        "What kind of product it is, a name from 'chandlery kinds'; left out: a container candle. The kind says which other fields are needed.",
        "pillar"
    );
    public static readonly ChoiceField Use = new("use", "Where it burns or is used.", ["indoor", "outdoor"]) { Needed = true };
    public static readonly TextField Vessel = new(
        "vessel",
        "The vessel's file name without .yaml; needed unless the kind stands by itself.",
        WaxShape.ReferenceExample
    )
    {
        Names = "vessel",
    };

    public static readonly GroupField Size = new("size", "Size of a body that stands by itself.", VesselShape.Size);

    public static readonly NumberField Net = new(
        "netGrams",
        "Nominal quantity on the label, g; needed of all that is solid.",
        "180",
        0,
        100_000
    );

    public static readonly NumberField NetVolume = new(
        "netMillilitres",
        "Nominal quantity of a liquid on the label, ml; needs 'liquid: { densityGramsPerMl }'.",
        "100",
        0,
        100_000
    );

    public static readonly TextField Wax = new(
        "wax",
        "The wax's file name without .yaml; needed of all that is solid.",
        WaxShape.ReferenceExample
    )
    {
        Names = "wax",
    };

    public static readonly TextField Base = new("base", "A liquid's base: its file name without .yaml.", WaxShape.ReferenceExample)
    {
        Names = "base",
    };

    public static readonly NumberField BaseWeight = new("baseGrams", "Grams of base, of a liquid.", "750", 0, PourShape.MostGrams);

    public static readonly FlagField RefilledInShop = new(
        "refilledInShop",
        "yes: the buyer's own bottle is filled again from a station in the shop."
    );

    public static readonly TextField IfraCategory = new(
        "ifraCategory",
        "The category that the oils' IFRA certificates name for such a product; for candles it is 12.",
        "'12'"
    )
    {
        Pattern = "^[0-9]{1,2}[A-Z]?$",
    };

    public static readonly NumberField WaxWeight = new(
        "waxGrams",
        "Grams of wax in the scented melt, when everything is weighed.",
        "4000",
        0,
        PourShape.MostGrams
    );

    public static readonly GroupField Load = new("load", "How much oil.", LoadShape.Load);
    public static readonly NumberField WickCount = new("count", "How many.", "1", 1, 200)
    {
        Needed = true,
        LowAllowed = true,
        Whole = true,
    };
    public static readonly TextField WickKind = new("kind", "Kind.", "cotton 6");
    public static readonly NumberField TrimTo = new("trimToMm", "Length that the buyer trims to, mm.", "5", 0, 30) { Needed = true };

    public static readonly NumberField SpacingFrom = new("fromMm", "The least distance, mm.", "30", 0, 1000) { Needed = true };
    public static readonly NumberField SpacingTo = new("toMm", "The greatest distance, mm.", "40", 0, 1000) { Needed = true };

    public static readonly GroupField WickSpacing = new(
        "spacing",
        "How far apart the wick maker wants them, from middle to middle; left out: common practice.",
        new Shape("wickSpacing", "The wick maker's distance between neighbours.", [SpacingFrom, SpacingTo])
    );

    public static readonly GroupField Wicks = new(
        "wicks",
        "The wicks; needed of all that burns.",
        new Shape("wicks", "The wicks.", [WickCount, WickKind, TrimTo, WickSpacing])
    );

    public static readonly NumberField Headspace = new("headspaceMm", "Room kept free below the brim, mm.", "10", 0, 1000);
    public static readonly NumberField Melt = Degrees("meltCelsius", "To melt the wax, °C.");
    public static readonly NumberField AddFragrance = Degrees("addFragranceCelsius", "To add the oil, °C.");
    public static readonly NumberField Pour = Degrees("pourCelsius", "To pour, °C.");
    public static readonly NumberField SecondPour = Degrees("topUpCelsius", "To pour the second time, °C.");

    public static readonly GroupField Temperatures = new(
        "temperatures",
        "Working temperatures.",
        new Shape("temperatures", "Working temperatures.", [Melt, AddFragrance, Pour, SecondPour])
    );

    public static readonly TextsField SoldIn = new("soldIn", "The places of sale, by country code or name.")
    {
        Needed = true,
        Pattern = PlaceName.Pattern,
    };

    public static readonly TextsField Languages = new("languages", "Languages of the label; left out: those that the places need.")
    {
        Pattern = "^[a-z]{2}$",
    };

    public static readonly GroupField Label = new(
        "label",
        "The label asked for; left out: the smallest lawful arrangement that the vessel can carry and the text fits.",
        LabelShape.Label
    );

    public static readonly TextField BatchCode = new("batchCode", "Batch code on the label.", "HL-2611-03");

    public static readonly NumberField FormulationNumber = new(
        "formulationNumber",
        "Formulation number for the UFI: never one that another composition had.",
        "7",
        0,
        Declared.FormulationNumber.Largest
    )
    {
        LowAllowed = true,
        Whole = true,
    };

    public static readonly DayField OnMarketSince = new(
        "onMarketSince",
        "Since when the candle has been sold, where older rules may still hold for it."
    );

    public static readonly GroupField Design = new(
        "design",
        "The front; without it the label is the legal panel alone.",
        DesignShape.Design
    );

    public static readonly ChoiceField LabelStands = new(
        "labelStands",
        "Where the label stands; on the vessel where nothing is said.",
        ["onVessel", "onTag", "onOuterPackage"]
    );

    public static readonly TextField Gtin = new("gtin", "GTIN-13 for a bar code; its check digit is verified.", "'4006381333931'")
    {
        Pattern = "^[0-9]{13}$",
    };

    public static readonly TextField InformationUrl = new("informationUrl", "Web address for a QR code.", "https://candles.example/fig")
    {
        Pattern = "^https?://",
    };

    public static readonly TextField Picture = new(
        "picture",
        "A picture of the product for offers and recalls: a file beside this one.",
        "harbour-light.jpg"
    )
    {
        Endings = [".jpg", ".jpeg", ".png", ".svg"],
        Pattern = @"^[^/\\]+\.([jJ][pP][eE]?[gG]|[pP][nN][gG]|[sS][vV][gG])$",
    };

    public static readonly NumberField Minutes = new("minutes", "Minutes of work that one takes, for its cost.", "12", 0, 10_000);
    private static readonly string[] OfLiquids = ["netMillilitres", "base", "liquid"];

    public static readonly Shape Candle = new(
        "candle",
        "A candle as planned, or another scented product",
        [
            Name,
            Kind,
            Use,
            Vessel,
            Size,
            Net,
            NetVolume,
            Wax,
            WaxWeight,
            Base,
            LiquidShape.Liquid,
            IfraCategory,
            RefilledInShop,
            Load,
            PourShape.Oils,
            PourShape.Extras,
            PourShape.TopUp,
            Wicks,
            Headspace,
            Temperatures,
            SoldIn,
            Languages,
            Label,
            Design,
            LabelStands,
            BatchCode,
            FormulationNumber,
            NotifiedShape.ProductCategory,
            OnMarketSince,
            Gtin,
            InformationUrl,
            Picture,
            AnswersShape.Answers,
            PackagingShape.Packaging,
            PackagingShape.EMark,
            Minutes,
            ConfirmedShape.Confirmed,
        ]
    )
    {
        // A file without a kind is a container candle; of the others a liquid has a base and a volume, a solid a wax and a mass.
        Variants =
        [
            new Variant(["vessel", "netGrams", "wax", "wicks"], ["kind", .. OfLiquids]),
            new Variant(["kind", "netGrams", "wax"], OfLiquids),
            new Variant(["kind", .. OfLiquids], ["netGrams", "wax"]),
        ],
        OneNeeded = ["load", "waxGrams"],
        UnlessEmpty = "oils",
        NotTogether = ["load", "waxGrams"],
    };

    private static NumberField Degrees(string key, string about) => new(key, about, "75", 0, 250);
}
