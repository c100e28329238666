using System.Text.RegularExpressions;
using UglyToad.PdfPig.Logging;

namespace Chandlery.Intake.Pages;

/// <summary>
/// Listens to what the library says of letters whose font does not tell what they mean, and for which it puts a letter of its own: what
/// stands on paper can then not be known from the file.
/// </summary>
internal sealed partial class UnmappedLetters : ILog
{
    private readonly Dictionary<string, int> byFont = [];

    /// <summary>How many such letters each font has had since the last call, by the font's name.</summary>
    public IReadOnlyDictionary<string, int> Take()
    {
        var taken = new Dictionary<string, int>(byFont);
        byFont.Clear();
        return taken;
    }

    /// <inheritdoc/>
    public void Debug(string message) => Note(message);

    /// <inheritdoc/>
    public void Debug(string message, Exception ex) => Note(message);

    /// <inheritdoc/>
    public void Warn(string message) => Note(message);

    /// <inheritdoc/>
    public void Error(string message) => Note(message);

    /// <inheritdoc/>
    public void Error(string message, Exception ex) => Note(message);

    private void Note(string message)
    {
        if (Unknown().Match(message) is { Success: true } match)
        {
            string font = match.Groups["font"].Value.TrimEnd('.').TrimStart('/');
            byFont[font] = byFont.GetValueOrDefault(font) + 1;
        }
    }

    [GeneratedRegex(@"could not find the corresponding character with code .* in font (?<font>\S+)", RegexOptions.IgnoreCase)]
    private static partial Regex Unknown();
}
