using System.Globalization;
using System.Numerics;
using System.Text.RegularExpressions;

namespace Chandlery.Core.Notified;

/// <summary>The countries of the UFI format.</summary>
internal static class UfiCountries
{
    public static IReadOnlyList<UfiCountry> All { get; } = [.. Build()];

    public static UfiCountry? Find(string code) => All.FirstOrDefault(c => c.Code == code);

    private static IEnumerable<UfiCountry> Build()
    {
        yield return new("KEY", 0, 0, 0, "a company key is a number of up to 41 bits", CompanyKey);
        yield return new(
            "FR",
            1,
            0,
            0,
            "two signs and nine digits",
            v =>
                Match(v, "^([0-9A-Z])([0-9A-Z])([0-9]{9})$") is { } m
                    ? (BigInteger)((36 * Base36(m[0])) + Base36(m[1])) * 1_000_000_000 + Number(m[2])
                    : null
        );
        yield return new("GB", 2, 0, 0, "nine or twelve digits, or two letters and three digits", GreatBritain);
        yield return Digits("LT", 3, 1, 0, "^([0-9]{9}|[0-9]{12})$", "nine or twelve digits");
        yield return Digits("SE", 3, 1, 1, "^([0-9]{12})$", "twelve digits");
        yield return Digits("HR", 4, 4, 0, "^([0-9]{11})$", "eleven digits");
        yield return Digits("IT", 4, 4, 1, "^([0-9]{11})$", "eleven digits");
        yield return Digits("LV", 4, 4, 2, "^([0-9]{11})$", "eleven digits");
        yield return new(
            "NL",
            4,
            4,
            3,
            "nine digits, B, two digits",
            v => Match(v, "^([0-9]{9})B([0-9]{2})$") is { } m ? Number(m[0] + m[1]) : null
        );
        yield return Digits("BG", 5, 7, 0, "^([0-9]{9,10})$", "nine or ten digits");
        yield return Digits("CZ", 5, 7, 1, "^([0-9]{8,10})$", "eight to ten digits");
        yield return new("IE", 5, 7, 2, "seven digits and one or two letters, or a digit, a sign, five digits and a letter", Ireland);
        yield return new(
            "ES",
            5,
            7,
            3,
            "a sign, seven digits and a sign",
            v =>
                Match(v, "^([0-9A-Z])([0-9]{7})([0-9A-Z])$") is { } m
                    ? (BigInteger)((36 * Base36(m[0])) + Base36(m[2])) * 10_000_000 + Number(m[1])
                    : null
        );
        yield return Digits("PL", 5, 7, 4, "^([0-9]{10})$", "ten digits");
        yield return Digits("RO", 5, 7, 5, "^([0-9]{2,10})$", "two to ten digits");
        yield return Digits("SK", 5, 7, 6, "^([0-9]{10})$", "ten digits");
        yield return new(
            "CY",
            5,
            7,
            7,
            "eight digits and a letter",
            v => Match(v, "^([0-9]{8})([A-Z])$") is { } m ? (BigInteger)Letter(m[1]) * 100_000_000 + Number(m[0]) : null
        );
        yield return new(
            "IS",
            5,
            7,
            8,
            "six signs",
            v =>
                Match(v, "^([0-9A-Z]{6})$") is { } m ? m[0].Aggregate(BigInteger.Zero, (sum, c) => (sum * 36) + Base36(c.ToString())) : null
        );
        yield return Digits("BE", 5, 7, 9, "^(0[0-9]{9})$", "ten digits, the first 0");
        yield return Digits("DE", 5, 7, 10, "^([0-9]{9})$", "nine digits");
        yield return Digits("EE", 5, 7, 11, "^([0-9]{9})$", "nine digits");
        yield return Digits("EL", 5, 7, 12, "^([0-9]{9})$", "nine digits");
        yield return Digits("NO", 5, 7, 13, "^([0-9]{9})$", "nine digits");
        yield return Digits("PT", 5, 7, 14, "^([0-9]{9})$", "nine digits");
        yield return Digits("AT", 5, 7, 15, "^U([0-9]{8})$", "U and eight digits");
        yield return Digits("DK", 5, 7, 16, "^([0-9]{8})$", "eight digits");
        yield return Digits("FI", 5, 7, 17, "^([0-9]{8})$", "eight digits");
        yield return Digits("HU", 5, 7, 18, "^([0-9]{8})$", "eight digits");
        yield return Digits("LU", 5, 7, 19, "^([0-9]{8})$", "eight digits");
        yield return Digits("MT", 5, 7, 20, "^([0-9]{8})$", "eight digits");
        yield return Digits("SI", 5, 7, 21, "^([0-9]{8})$", "eight digits");
        yield return Digits("LI", 5, 7, 22, "^([0-9]{5})$", "five digits");
    }

    private static UfiCountry Digits(string code, int group, int bits, int number, string pattern, string form) =>
        new(code, group, bits, number, form, v => Match(v, pattern) is { } m ? Number(m[0]) : null);

    private static BigInteger? CompanyKey(string text) =>
        Match(text, "^([0-9]{1,13})$") is { } m && Number(m[0]) < BigInteger.One << 41 ? Number(m[0]) : null;

    private static BigInteger? GreatBritain(string vat)
    {
        if (Match(vat, "^([0-9]{9}|[0-9]{12})$") is { } digits)
        {
            return (BigInteger.One << 40) + Number(digits[0]);
        }

        return Match(vat, "^([A-Z])([A-Z])([0-9]{3})$") is { } m ? ((26 * Letter(m[0])) + Letter(m[1])) * 1000 + Number(m[2]) : null;
    }

    private static BigInteger? Ireland(string vat)
    {
        if (Match(vat, @"^([0-9])([A-Z+*])([0-9]{5})([A-Z])$") is { } old)
        {
            int second = old[1] switch
            {
                "+" => 26,
                "*" => 27,
                _ => Letter(old[1]),
            };
            return (BigInteger)((26 * second) + Letter(old[3])) * 1_000_000 + Number(old[0] + old[2]);
        }

        return Match(vat, "^([0-9]{7})([A-Z])([A-Z]?)$") is { } m
            ? (BigInteger.One << 33)
                + ((BigInteger)((26 * (m[2].Length == 0 ? 0 : Letter(m[2]))) + Letter(m[1])) * 10_000_000)
                + Number(m[0])
            : null;
    }

    private static string[]? Match(string text, string pattern)
    {
        Match match = Regex.Match(text, pattern, RegexOptions.CultureInvariant);
        return match.Success ? [.. match.Groups.Values.Skip(1).Select(g => g.Value)] : null;
    }

    private static BigInteger Number(string digits) => BigInteger.Parse(digits, CultureInfo.InvariantCulture);

    private static int Letter(string letter) => letter[0] - 'A';

    private static int Base36(string sign) => char.IsAsciiDigit(sign[0]) ? sign[0] - '0' : Letter(sign) + 10;
}
