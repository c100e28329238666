using System.Text.RegularExpressions;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>An EC (EINECS, ELINCS, NLP or list) number whose check digit holds.</summary>
/// <remarks>
/// Check digit: the six leading digits times 1 to 6, summed, modulo 11 (EC Inventory); where that gives 10 it is written as 1, as in
/// 423-740-1 and sixty more numbers of CLP Annex VI.
/// </remarks>
public sealed partial record EcNumber
{
    private EcNumber(string text) => Text = text;

    /// <summary>The number with its hyphens, such as <c>227-813-5</c>.</summary>
    public string Text { get; }

    /// <summary>Reads a number; refused when the form or the check digit is wrong.</summary>
    public static Parsed<EcNumber> Parse(string text)
    {
        string trimmed = text.Trim();
        if (!Form().IsMatch(trimmed))
        {
            return Parsed.Not<EcNumber>($"'{text}' is not an EC number (three digits, three digits, one digit, with hyphens).");
        }

        string digits = trimmed.Replace("-", "", StringComparison.Ordinal);
        int sum = 0;
        for (int i = 0; i < 6; i++)
        {
            sum += (i + 1) * (digits[i] - '0');
        }

        int check = sum % 11 == 10 ? 1 : sum % 11;
        if (check != digits[6] - '0')
        {
            return Parsed.Not<EcNumber>($"EC number {trimmed} fails its check digit: the digits call for {check}, not {digits[6]}.");
        }

        return Parsed.As(new EcNumber(trimmed));
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    [GeneratedRegex(@"^[0-9]{3}-[0-9]{3}-[0-9]$", RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
