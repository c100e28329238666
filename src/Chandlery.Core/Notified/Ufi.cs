using System.Numerics;
using System.Text.RegularExpressions;
using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Core.Notified;

/// <summary>
/// Makes and checks unique formula identifiers: 74 bits of formulation number, country and VAT number in base 31, with a
/// check character (ECHA, "UFI Developers Manual", version 1.4, November 2021).
/// </summary>
public static partial class Ufi
{
    private const string Alphabet = "0123456789ACDEFGHJKMNPQRSTUVWXY";
    private const int Base = 31;
    private const int Digits = 15;
    private const int VatBits = 41;

    // Position 1 to 15 of the result takes this digit of the number.
    private static readonly int[] Order = [6, 5, 4, 8, 3, 9, 10, 11, 2, 1, 12, 7, 13, 14, 15];

    /// <summary>Country codes whose VAT numbers the format knows.</summary>
    public static IReadOnlyList<string> Countries { get; } = [.. UfiCountries.All.Select(c => c.Code)];

    /// <summary>Makes a UFI; refused when the VAT number or the formulation number does not fit.</summary>
    /// <param name="country">Country code of the VAT number (EL for Greece), or KEY for a company key.</param>
    /// <param name="vat">VAT number without the country's letters.</param>
    /// <param name="formulation">Formulation number, 0 to <see cref="FormulationNumber.Largest"/>.</param>
    public static Parsed<string> Make(string country, string vat, long formulation)
    {
        if (formulation is < 0 or > FormulationNumber.Largest)
        {
            return Parsed.Not<string>($"A formulation number lies between 0 and {FormulationNumber.Largest}.");
        }

        string code = country.Trim().ToUpperInvariant() is "GR" ? "EL" : country.Trim().ToUpperInvariant();
        if (UfiCountries.Find(code) is not { } rule)
        {
            return Parsed.Not<string>($"The UFI format knows no VAT numbers of '{country}'. It knows: {string.Join(", ", Countries)}.");
        }

        // Numbers are written with blanks, dots and their country's letters before them; none of these belongs to the number.
        string plain = Separators().Replace(vat.Trim().ToUpperInvariant(), "");
        BigInteger? read =
            rule.Value(plain) ?? (plain.StartsWith(code, StringComparison.Ordinal) ? rule.Value(plain[code.Length..]) : null);
        if (read is not { } value)
        {
            return Parsed.Not<string>($"'{vat}' is no VAT number of {code}: {rule.Form}.");
        }

        BigInteger payload = formulation;
        payload = (payload << 4) | rule.Group;
        payload = (payload << rule.CountryBits) | rule.Number;
        payload = (payload << (VatBits - rule.CountryBits)) | value;
        payload <<= 1;
        return Parsed.As(Write(payload));
    }

    /// <summary>Reads a UFI; refused when it is not one.</summary>
    public static Parsed<UfiContent> Parse(string ufi)
    {
        string plain = Separators().Replace(ufi.Trim().ToUpperInvariant(), "");
        if (plain.StartsWith("UFI:", StringComparison.Ordinal))
        {
            plain = plain[4..];
        }

        if (plain.Length != Digits + 1 || plain.Any(c => !Alphabet.Contains(c, StringComparison.Ordinal)))
        {
            return Parsed.Not<UfiContent>($"'{ufi}' is no UFI: four blocks of four signs out of {Alphabet}.");
        }

        int[] values = [.. plain.Select(c => Alphabet.IndexOf(c, StringComparison.Ordinal))];
        if ((values[0] + WeightedSum(values.AsSpan(1))) % Base != 0)
        {
            return Parsed.Not<UfiContent>($"'{ufi}' fails its check character: a sign was misread.");
        }

        var digits = new int[Digits];
        for (int i = 0; i < Digits; i++)
        {
            digits[Order[i] - 1] = values[i + 1];
        }

        BigInteger payload = digits.Aggregate(BigInteger.Zero, (sum, d) => (sum * Base) + d);
        if (!payload.IsEven)
        {
            return Parsed.Not<UfiContent>($"'{ufi}' is of a later version of the format.");
        }

        payload >>= 1;
        BigInteger vatAndCountry = payload & ((BigInteger.One << VatBits) - 1);
        int group = (int)((payload >> VatBits) & 0xF);
        long formulation = (long)(payload >> (VatBits + 4));
        UfiCountry? rule = UfiCountries.All.FirstOrDefault(c => c.Group == group && vatAndCountry >> (VatBits - c.CountryBits) == c.Number);
        if (rule is null || formulation > FormulationNumber.Largest)
        {
            return Parsed.Not<UfiContent>($"'{ufi}' names no country that the format knows.");
        }

        return Parsed.As(new UfiContent(rule.Code, vatAndCountry & ((BigInteger.One << (VatBits - rule.CountryBits)) - 1), formulation));
    }

    private static string Write(BigInteger payload)
    {
        var digits = new int[Digits];
        for (int i = Digits - 1; i >= 0; i--)
        {
            digits[i] = (int)(payload % Base);
            payload /= Base;
        }

        int[] ordered = [.. Order.Select(o => digits[o - 1])];
        int check = (Base - (WeightedSum(ordered) % Base)) % Base;
        string signs = string.Concat(ordered.Prepend(check).Select(d => Alphabet[d]));
        return string.Join('-', signs.Chunk(4).Select(c => new string(c)));
    }

    private static int WeightedSum(ReadOnlySpan<int> values)
    {
        int sum = 0;
        for (int i = 0; i < values.Length; i++)
        {
            sum += (i + 2) * values[i];
        }

        return sum;
    }

    [GeneratedRegex(@"[\s.-]", RegexOptions.CultureInvariant)]
    private static partial Regex Separators();
}
