using System.Text.RegularExpressions;

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

    /// <summary>Reads a number; null when the form or the check digit is wrong, with the reason in <paramref name="why"/>.</summary>
    public static CasNumber? TryParse(string text, out string why)
    {
        string trimmed = text.Trim();
        if (!Form().IsMatch(trimmed))
        {
            why = $"'{text}' is not a CAS number (two to seven digits, two digits, one digit, with hyphens).";
            return null;
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
            why = $"CAS number {trimmed} fails its check digit: the digits call for {check}, not {trimmed[^1]}.";
            return null;
        }

        why = "";
        return new CasNumber(trimmed);
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    [GeneratedRegex(@"^[1-9][0-9]{1,6}-[0-9]{2}-[0-9]$", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}

/// <summary>An EC (EINECS, ELINCS, NLP or list) number whose check digit holds.</summary>
/// <remarks>Check digit: the six leading digits times 1 to 6, summed, modulo 11 (EC Inventory).</remarks>
public sealed partial record EcNumber
{
    private EcNumber(string text) => Text = text;

    /// <summary>The number with its hyphens, such as <c>227-813-5</c>.</summary>
    public string Text { get; }

    /// <summary>Reads a number; null when the form or the check digit is wrong, with the reason in <paramref name="why"/>.</summary>
    public static EcNumber? TryParse(string text, out string why)
    {
        string trimmed = text.Trim();
        if (!Form().IsMatch(trimmed))
        {
            why = $"'{text}' is not an EC number (three digits, three digits, one digit, with hyphens).";
            return null;
        }

        string digits = trimmed.Replace("-", "", StringComparison.Ordinal);
        int sum = 0;
        for (int i = 0; i < 6; i++)
        {
            sum += (i + 1) * (digits[i] - '0');
        }

        int check = sum % 11;
        if (check != digits[6] - '0')
        {
            why =
                check == 10
                    ? $"EC number {trimmed} cannot exist: its digits call for a check digit of 10."
                    : $"EC number {trimmed} fails its check digit: the digits call for {check}, not {digits[6]}.";
            return null;
        }

        why = "";
        return new EcNumber(trimmed);
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    [GeneratedRegex(@"^[0-9]{3}-[0-9]{3}-[0-9]$", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
