using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of a dispatch.</summary>
internal static class DispatchShape
{
    /// <summary>More than anybody sends at once.</summary>
    public const double MostPieces = 10_000_000;

    public static readonly TextField Batch = new("batch", "The batch's file name without .yaml.", "hb-2611")
    {
        Needed = true,
        Names = "batch",
    };
    public static readonly DayField On = new("on", "The day.") { Needed = true };
    public static readonly NumberField Pieces = new("pieces", "How many candles.", "6", 0, MostPieces) { Whole = true, Needed = true };
    public static readonly TextField Country = PartyShape.Country with
    {
        About = "Country code of the place that they went to.",
        Needed = true,
    };
    public static readonly ChoiceField ToWhom = new("toWhom", "A shop that sells them on, or a person who burns them.", ["shop", "person"])
    {
        Needed = true,
    };

    public static readonly TextField Name = new("name", "Name.", "the name on the parcel") { Needed = true };
    public static readonly TextsField Address = new("address", "The lines of the postal address.");
    public static readonly TextField Email = new("email", "Electronic address.", "hello@shop.example");
    public static readonly TextField Telephone = new("telephone", "Telephone number.", "'+353 1 555 0100'");

    public static readonly Shape Somebody = new("receiver", "Somebody's name and how to reach them.", [Name, Address, Email, Telephone]);
    public static readonly GroupField Receiver = new("receiver", "Who that is.", Somebody);
    public static readonly DayField Forgotten = new("forgotten", "When name and address were taken out.");

    public static readonly Shape Dispatch = new(
        "dispatch",
        "Candles of a batch that went to somebody",
        [Batch, On, Pieces, Country, ToWhom, Receiver, Forgotten]
    )
    {
        Variants = Variant.OneOf(["receiver"], ["forgotten"]),
    };
}
