using System.Text.RegularExpressions;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A CAS Registry Number whose check digit holds.</summary>
/// <remarks>
/// Check digit: counted from the right, the first digit before the check digit times 1, the next times 2, and so on;
/// the sum modulo 10 (CAS, "Check Digit Verification of CAS Registry Numbers").
/// </remarks>
public sealed partial record CasNumber
{
    private CasNumber(string text) => Text = text;

    /// <summary>The number with its hyphens, such as <c>5989-27-5</c>.</summary>
    public string Text { get; }

    /// <summary>Reads a number; refused when the form or the check digit is wrong.</summary>
    public static Parsed<CasNumber> Parse(string text)
    {
        string trimmed = text.Trim();
        if (!Form().IsMatch(trimmed))
        {
            return Parsed.Not<CasNumber>($"'{text}' is not a CAS number (two to seven digits, two digits, one digit, with hyphens).");
        }

        int sum = 0;
        int weight = 1;
        for (int i = trimmed.Length - 3; i >= 0; i--)
        {
            if (trimmed[i] != '-')
            {
                sum += weight++ * (trimmed[i] - '0');
            }
        }

        int check = sum % 10;
        if (check != trimmed[^1] - '0')
        {
            return Parsed.Not<CasNumber>($"CAS number {trimmed} fails its check digit: the digits call for {check}, not {trimmed[^1]}.");
        }

        return Parsed.As(new CasNumber(trimmed));
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    [GeneratedRegex(@"^[1-9][0-9]{1,6}-[0-9]{2}-[0-9]$", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
