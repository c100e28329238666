using System.Text.RegularExpressions;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads who stands behind the candle beside the one who pours it.</summary>
internal static partial class PartyReader
{
    public static MarketParties Read(Fields fields) =>
        new(
            ReadCountry(fields, fields.OptionalText(PartyShape.Country)),
            ReadOptional(fields, PartyShape.MadeFor, needsTelephone: true),
            [.. fields.Groups(PartyShape.Importers).Select(g => ReadParty(g, needsTelephone: false))],
            [.. fields.Groups(PartyShape.ResponsiblePersons).Select(g => ReadParty(g, needsTelephone: false))],
            fields.OptionalText(PartyShape.ContactPoint)
        );

    private static Party? ReadOptional(Fields fields, GroupField field, bool needsTelephone) =>
        fields.OptionalGroup(field) is { } group ? ReadParty(group, needsTelephone) : null;

    private static Party ReadParty(Fields fields, bool needsTelephone)
    {
        string name = fields.Text(PartyShape.Name);
        IReadOnlyList<string> address = fields.Texts(PartyShape.Address);
        if (address.Count == 0)
        {
            fields.Problems.Add(fields.PlaceOf(PartyShape.Address), "'address' is missing.", "List the lines of the postal address.");
        }

        string? country = ReadCountry(fields, fields.Text(PartyShape.Country));
        string? telephone = needsTelephone ? fields.Text(PartyShape.Telephone) : fields.OptionalText(PartyShape.Telephone);
        string? email = fields.OptionalText(PartyShape.Email);
        string? web = fields.OptionalText(PartyShape.Web);
        if (email is null && web is null)
        {
            fields.Problems.Add(
                fields.Place,
                "An electronic address is missing.",
                "Add 'email' or 'web': the law on product safety asks for one of everybody who is named on the product."
            );
        }

        fields.Done();
        return new Party(name, address, country, telephone, email ?? web);
    }

    public static string? ReadCountry(Fields fields, string? code)
    {
        if (code is not null && !Code().IsMatch(code))
        {
            fields.Problems.Add(
                fields.PlaceOf(PartyShape.Country),
                $"'country: {code}' is no country code.",
                "Write two capital letters, such as IE; NI for Northern Ireland."
            );
        }

        return code;
    }

    [GeneratedRegex("^[A-Z]{2}$")]
    private static partial Regex Code();
}
