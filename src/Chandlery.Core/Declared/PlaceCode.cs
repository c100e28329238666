using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;

namespace Chandlery.Core.Declared;

/// <summary>The code of a place of sale after ISO 3166-1, such as <c>IE</c>; <c>NI</c> and <c>UN</c> are our own. Whether its law is known is for the law's data to say.</summary>
public sealed partial record PlaceCode
{
    private PlaceCode(string text) => Text = text;

    /// <summary>The code.</summary>
    public string Text { get; }

    /// <summary>Reads a code; null when the text has not the form of one.</summary>
    public static PlaceCode? TryParse(string text) => Form().IsMatch(text) ? new PlaceCode(text) : null;

    /// <summary>The code, for print.</summary>
    [return: NotNullIfNotNull(nameof(code))]
    public static implicit operator string?(PlaceCode? code) => code?.Text;

    /// <inheritdoc/>
    public override string ToString() => Text;

    [GeneratedRegex("^[A-Z]{2}$")]
    private static partial Regex Form();
}
