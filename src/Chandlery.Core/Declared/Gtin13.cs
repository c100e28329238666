using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A GS1 article number of thirteen digits (GTIN-13) whose check digit holds.</summary>
/// <remarks>Check digit: from the right, weights 3 and 1 in turn (GS1 General Specifications, 7.9).</remarks>
public sealed record Gtin13
{
    private const int Length = 13;

    private Gtin13(string text) => Text = text;

    /// <summary>Its thirteen digits.</summary>
    public string Text { get; }

    /// <summary>Reads a number; refused when the form or the check digit is wrong.</summary>
    public static Parsed<Gtin13> Parse(string text)
    {
        if (text.Length != Length || !text.All(char.IsAsciiDigit))
        {
            return Parsed.Not<Gtin13>($"'{text}' is no GTIN-13: write its thirteen digits in quotes.");
        }

        int sum = text.Take(Length - 1).Select((c, i) => (c - '0') * (i % 2 == 0 ? 1 : 3)).Sum();
        int check = (10 - (sum % 10)) % 10;
        return check == text[^1] - '0'
            ? Parsed.As(new Gtin13(text))
            : Parsed.Not<Gtin13>($"GTIN {text} fails its check digit: the digits call for {check}.");
    }

    /// <inheritdoc/>
    public override string ToString() => Text;
}
