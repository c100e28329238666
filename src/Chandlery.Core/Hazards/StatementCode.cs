using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;

namespace Chandlery.Core.Hazards;

/// <summary>
/// The code of a statement on a label: a hazard statement (<c>H317</c>, <c>H360FD</c>), a supplemental one (<c>EUH208</c>), a
/// precautionary one (<c>P302+P352</c>), or one of the GHS without a code of its own (<c>GHS-ELICITATION</c>).
/// </summary>
public sealed partial record StatementCode
{
    private StatementCode(string text) => Text = text;

    /// <summary>The code.</summary>
    public string Text { get; }

    /// <summary>True for a statement that supplements the hazard statements (EUH...).</summary>
    public bool IsSupplemental => Text.StartsWith("EUH", StringComparison.Ordinal);

    /// <summary>Reads a code; null when the text has not the form of one.</summary>
    public static StatementCode? TryParse(string text) => Form().IsMatch(text) ? new StatementCode(text) : null;

    /// <summary>A code that is known to be one.</summary>
    /// <exception cref="FormatException">The text has not the form of a code.</exception>
    public static StatementCode Of(string text) => TryParse(text) ?? throw new FormatException($"'{text}' is no code of a statement.");

    /// <summary>Its text, for print.</summary>
    [return: NotNullIfNotNull(nameof(code))]
    public static implicit operator string?(StatementCode? code) => code?.Text;

    /// <inheritdoc/>
    public override string ToString() => Text;

    [GeneratedRegex("^(?:H[2-4][0-9]{2}[A-Za-z]{0,2}|EUH[0-9]{3}[A-Z]?|P[1-5][0-9]{2}(?:\\+P[1-5][0-9]{2})*|GHS-[A-Z]+)$")]
    private static partial Regex Form();
}
