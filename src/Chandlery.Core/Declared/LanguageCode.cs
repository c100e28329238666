using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;

namespace Chandlery.Core.Declared;

/// <summary>The code of a language after ISO 639-1, such as <c>de</c>. Whether there are texts in it is for the law's data to say.</summary>
public sealed partial record LanguageCode
{
    private LanguageCode(string text) => Text = text;

    /// <summary>The code.</summary>
    public string Text { get; }

    /// <summary>Reads a code; null when the text has not the form of one.</summary>
    public static LanguageCode? TryParse(string text) => Form().IsMatch(text) ? new LanguageCode(text) : null;

    /// <summary>The code, for print.</summary>
    [return: NotNullIfNotNull(nameof(code))]
    public static implicit operator string?(LanguageCode? code) => code?.Text;

    /// <inheritdoc/>
    public override string ToString() => Text;

    [GeneratedRegex("^[a-z]{2}$")]
    private static partial Regex Form();
}
