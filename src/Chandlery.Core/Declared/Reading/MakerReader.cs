using System.Text.RegularExpressions;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads the maker.</summary>
internal static class MakerReader
{
    /// <summary>The maker.</summary>
    public static Maker Read(Fields fields, string id)
    {
        string name = fields.Text(MakerShape.Name);
        IReadOnlyList<string> address = fields.Texts(MakerShape.Address);
        if (address.Count == 0)
        {
            fields.Problems.Add(
                fields.PlaceOf(MakerShape.Address),
                "'address' is missing.",
                "List the lines of the postal address: the law asks for it on every label."
            );
        }

        string telephone = fields.Text(MakerShape.Telephone);
        string? email = fields.OptionalText(MakerShape.Email);
        string? web = fields.OptionalText(MakerShape.Web);
        string? emergency = fields.OptionalText(MakerShape.EmergencyTelephone);
        if (email is null && web is null)
        {
            fields.Problems.Add(
                fields.Place,
                "An electronic address is missing.",
                "Add 'email' or 'web': the law on product safety asks for one on the product."
            );
        }

        Fields? vat = fields.OptionalGroup(MakerShape.Vat);
        VatNumber? number = vat is null ? null : new VatNumber(vat.Text(MakerShape.Country), vat.Text(MakerShape.Number));
        vat?.Done();
        return new Maker
        {
            Id = id,
            Place = fields.Place,
            Name = name,
            AddressLines = address,
            Telephone = telephone,
            Email = email,
            Web = web,
            EmergencyTelephone = emergency,
            Vat = number,
            ProductCategory = NotifiedShape.ReadProductCategory(fields),
            Parties = PartyReader.Read(fields),
            Rates = ReadRates(fields),
            SharedRegister = ReadSharedRegister(fields),
        };
    }

    // maker.yaml is kept in the register word for word and for good, so no password may stand in it.
    private static string? ReadSharedRegister(Fields fields)
    {
        string? connection = fields.OptionalText(MakerShape.SharedRegister);
        if (connection is not null && !Regex.IsMatch(connection, MakerShape.SharedRegister.Pattern!))
        {
            fields.Problems.Add(
                fields.PlaceOf(MakerShape.SharedRegister),
                "'sharedRegister' names no host, or holds a password: the register keeps maker.yaml word for word, for every bench to read.",
                $"Write it like {MakerShape.SharedRegister.Example}, and give the password in the variable PGPASSWORD or in a password file (PGPASSFILE)."
            );
        }

        return connection;
    }

    private static Rates? ReadRates(Fields fields)
    {
        if (fields.OptionalGroup(MakerShape.Rates) is not { } group)
        {
            return null;
        }

        string currency = group.Text(MakerShape.Currency);
        if (group.Has(MakerShape.Currency) && !Regex.IsMatch(currency, MakerShape.Currency.Pattern!))
        {
            group.Problems.Add(
                group.PlaceOf(MakerShape.Currency),
                $"'{currency}' in 'currency' is no currency.",
                "Write its three letters, such as EUR."
            );
        }

        var rates = new Rates(
            currency,
            group.OptionalNumber(MakerShape.PerHour) is { } hour ? new Money((decimal)hour) : null,
            group.OptionalNumber(MakerShape.Margin),
            group.OptionalNumber(MakerShape.Tax)
        );
        group.Done();
        return rates;
    }
}
