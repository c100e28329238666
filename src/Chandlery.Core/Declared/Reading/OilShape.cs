using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a fragrance oil.</summary>
internal static class OilShape
{
    public static readonly TextField Name = new("name", "Trade name.", "Sea Fog") { Needed = true };
    public static readonly TextField Supplier = new("supplier", "Who sells it.", "the name on the sheet") { Needed = true };

    public static readonly TextField Document = new("document", "Reference and version of the safety data sheet.", "SDS 1187 version 4")
    {
        Needed = true,
    };

    public static readonly DayField Revised = new("revised", "Day of that version.") { Needed = true };
    public static readonly NumberField Celsius = new("celsius", "Flash point, °C.", "78", LowestFlash, HighestFlash);
    public static readonly NumberField AboveCelsius = new("aboveCelsius", "For '> 93 °C'.", "93", LowestFlash, HighestFlash);
    public static readonly TextField Method = new("method", "Such as 'closed cup'.", "closed cup");

    public static readonly GroupField FlashPoint = new(
        "flashPoint",
        "Either celsius or aboveCelsius.",
        new Shape("flashPoint", "A flash point.", [Celsius, AboveCelsius, Method])
        {
            Variants = Variant.OneOf(["celsius"], ["aboveCelsius"]),
        }
    );

    public static readonly NumberField Density = new("densityGramsPerMl", "Density, g/ml.", "0.97", 0, 25);

    public static readonly NumberField DropMass = new("dropMilligrams", "Mass of one drop, mg: weigh a hundred.", "20", 0, 1000);

    public static readonly GroupField HighestLoad = new("highestLoad", "The most that its supplier allows.", LoadShape.Load);

    public static readonly NumberField Amendment = new("amendment", "Number of the amendment.", "51", 0, 200)
    {
        Needed = true,
        Whole = true,
    };

    public static readonly DayField Date = new("date", "Day of the certificate.") { Needed = true };

    public static readonly NumberField Limit = new("", "Percent of the finished product.", "9.1", 0, 100) { LowAllowed = true };

    public static readonly MapField Limits = new(
        "limits",
        "Highest share of the finished product per category; category 12 is the candle's.",
        new EitherField("", "", [new ChoiceField("", "", [NotRestricted, NotPermitted]), Limit])
    );

    public static readonly GroupField Ifra = new(
        "ifra",
        "The IFRA certificate.",
        new Shape("ifra", "An IFRA certificate.", [Amendment, Date, Limits])
    );

    public static readonly TextsField NotDeclared = new("notDeclared", "What the sheet leaves out, in your words.");

    public static readonly ChoiceField Note = new(
        "note",
        "The note that it plays, for ornaments and their colours.",
        [.. Enum.GetNames<Scent>().Select(n => n.ToLowerInvariant())]
    );

    public static readonly TextField DraftFile = new("file", "Name of the PDF.", "sheet.pdf") { Needed = true };

    public static readonly TextField DraftHash = new("sha256", "Its SHA-256, by which it is known again.", "the file's hash")
    {
        Needed = true,
        Pattern = "^[0-9a-f]{64}$",
    };

    public static readonly GroupsField From = new("from", "The PDFs.", new Shape("draftSource", "A PDF.", [DraftFile, DraftHash]))
    {
        Needed = true,
        NotEmpty = true,
    };

    public static readonly TextField By = new("by", "Who compared.", "your name") { Needed = true };
    public static readonly DayField On = new("on", "When.") { Needed = true };

    public static readonly EitherField Reviewed = new(
        "reviewed",
        "'no', or who compared every line with the PDF and when.",
        [
            new ChoiceField("", "", ["no"]),
            new GroupField("", "", new Shape("review", "Who compared every line with the PDF, and when.", [By, On])),
        ]
    )
    {
        Needed = true,
    };

    public static readonly GroupField Draft = new(
        "draft",
        "Written by the command 'draft': which PDFs the declaration was drafted from. No label is printed until 'reviewed' is filled in.",
        new Shape("draft", "Where a draft comes from.", [From, Reviewed])
    );

    public const string NotRestricted = "not restricted";
    public const string NotPermitted = "not permitted";
    private const double LowestFlash = -100;
    private const double HighestFlash = 500;

    public static readonly Shape Oil = new(
        "oil",
        "A fragrance oil as bought",
        [
            Name,
            Supplier,
            Document,
            Revised,
            IngredientShape.Table with
            {
                Needed = true,
            },
            IngredientShape.Classes,
            FlashPoint,
            Density,
            DropMass,
            HighestLoad,
            Ifra,
            NotDeclared,
            .. NotifiedShape.Source,
            Draft,
            Note,
            ConfirmedShape.Confirmed,
        ]
    );
}
