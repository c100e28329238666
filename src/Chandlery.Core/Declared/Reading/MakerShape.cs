using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of the maker.</summary>
internal static class MakerShape
{
    public static readonly TextField Name = new("name", "Name on the label.", "the name on the label") { Needed = true };

    public static readonly TextsField Address = new("address", "The lines of the postal address.") { Needed = true, NotEmpty = true };

    public static readonly TextField Telephone = new("telephone", "Telephone number.", "'+353 1 555 0100'") { Needed = true };
    public static readonly TextField Email = new("email", "Electronic address.", "hello@maker.example");
    public static readonly TextField Web = new("web", "Web address.", "https://maker.example");
    public static readonly TextField Country = new("country", "Country code.", "IE") { Needed = true };

    public static readonly TextField Number = new(
        "number",
        "VAT number without the country's letters.",
        "the number without the country's letters"
    )
    {
        Needed = true,
        AsNumber = new NumberField("", "Its digits.", "1234567", 0, 1e15),
    };

    public static readonly GroupField Vat = new("vat", "For the UFI.", new Shape("vat", "A VAT number.", [Country, Number]));

    public static readonly TextField EmergencyTelephone = new(
        "emergencyTelephone",
        "Emergency telephone number, where a place of sale asks for one (South Africa).",
        "'+353 1 555 0100'"
    );

    public static readonly TextField Currency = new("currency", "Three letters: what all amounts are in.", "EUR")
    {
        Needed = true,
        Pattern = "^[A-Z]{3}$",
    };

    public static readonly NumberField PerHour = new("perHour", "What an hour of work costs.", "24", 0, 10_000);

    public static readonly NumberField Margin = new(
        "marginPercent",
        "Margin, percent of the price before tax: what costs 6 has a price of 10 with a margin of 40.",
        "40",
        0,
        99
    )
    {
        LowAllowed = true,
    };

    public static readonly NumberField Tax = new("taxPercent", "Tax on the price, percent.", "23", 0, 100) { LowAllowed = true };

    public static readonly GroupField Rates = new(
        "rates",
        "What prices are reckoned by: your own figures, held against no tax law.",
        new Shape("rates", "What prices are reckoned by.", [Currency, PerHour, Margin, Tax])
    );

    public static readonly TextField SharedRegister = new(
        "sharedRegister",
        "Where several benches share one register of labels: the connection string of its PostgreSQL database, in place of the file "
            + "register.sqlite. The password stands elsewhere: in the variable PGPASSWORD, or in the password file that PGPASSFILE names.",
        "Host=bench-server;Database=register;Username=maker"
    )
    {
        Pattern = "^(?=.*[Hh][Oo][Ss][Tt] *=)(?!.*([Pp][Aa][Ss][Ss][Ww][Oo][Rr][Dd]|[Pp][Ss][Ww]|[Pp][Ww][Dd]) *=)",
    };

    public static readonly Shape Maker = new(
        "maker",
        "Who makes the candle and answers for the label",
        [
            Name,
            Address,
            Telephone,
            Email,
            Web,
            Vat,
            EmergencyTelephone,
            PartyShape.Country,
            PartyShape.ContactPoint,
            PartyShape.MadeFor,
            PartyShape.Importers,
            PartyShape.ResponsiblePersons,
            NotifiedShape.ProductCategory,
            Rates,
            SharedRegister,
            ConfirmedShape.Confirmed,
        ]
    )
    {
        OneNeeded = ["email", "web"],
    };
}
