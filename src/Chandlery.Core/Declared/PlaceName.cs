using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;

namespace Chandlery.Core.Declared;

/// <summary>
/// A place of sale as a declaration names it: by its code or by a name that people give it, such as <c>DE</c>, <c>Germany</c> or
/// <c>UK</c>. Which place is meant, and whether its law is known, is for the law's data to say.
/// </summary>
public sealed partial record PlaceName
{
    /// <summary>What a code or name looks like.</summary>
    public const string Pattern = @"^\p{L}[\p{L}\p{M} .'’()-]*$";

    private PlaceName(string text) => Text = text;

    /// <summary>What was written.</summary>
    public string Text { get; }

    /// <summary>Reads a name; null when the text cannot be one.</summary>
    public static PlaceName? TryParse(string text) => Form().IsMatch(text) ? new PlaceName(text) : null;

    /// <summary>What was written, for print.</summary>
    [return: NotNullIfNotNull(nameof(name))]
    public static implicit operator string?(PlaceName? name) => name?.Text;

    /// <inheritdoc/>
    public override string ToString() => Text;

    [GeneratedRegex(Pattern, RegexOptions.CultureInvariant)]
    private static partial Regex Form();
}
