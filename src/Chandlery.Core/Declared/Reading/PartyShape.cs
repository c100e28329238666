using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of those who stand behind the candle beside the one who pours it.</summary>
internal static class PartyShape
{
    public static readonly TextField Country = new("country", "Country code of the place of establishment; NI for Northern Ireland.", "IE")
    {
        Pattern = "^[A-Z]{2}$",
    };

    public static readonly TextField Name = new("name", "Name.", "the name on the label") { Needed = true };
    public static readonly TextsField Address = new("address", "The lines of the postal address.") { Needed = true, NotEmpty = true };
    public static readonly TextField Telephone = new("telephone", "Telephone number.", "'+353 1 555 0100'");
    public static readonly TextField Email = new("email", "Electronic address.", "hello@importer.example");
    public static readonly TextField Web = new("web", "Web address.", "https://importer.example");

    public static readonly TextField ContactPoint = new(
        "contactPoint",
        "The single place to turn to with questions and complaints, free of charge; left out: the electronic address.",
        "https://maker.example/contact"
    );

    public static readonly GroupField MadeFor = new(
        "madeFor",
        "Under whose name it is sold (private label): the law takes that one for the maker.",
        Party("madeFor", [Telephone with { Needed = true }, Email, Web])
    );

    public static readonly GroupsField Importers = new(
        "importers",
        "Who brings the candle on the market from outside, one for each market.",
        Party("importer", [Telephone, Email, Web])
    );

    public static readonly GroupsField ResponsiblePersons = new(
        "responsiblePersons",
        "Who answers for the candle in the Union or in Northern Ireland when the maker is not established there.",
        Party("responsiblePerson", [Telephone, Email, Web])
    );

    private static Shape Party(string name, Field[] contact) =>
        new(name, "Somebody with a name and a place.", [Name, Address, Country with { Needed = true }, .. contact])
        {
            OneNeeded = ["email", "web"],
        };
}
