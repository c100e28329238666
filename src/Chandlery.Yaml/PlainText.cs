namespace Chandlery.Yaml;

/// <summary>Texts as they are compared.</summary>
public static class PlainText
{
    /// <summary>Letters and figures in lower case: sheets differ in blanks, hyphens and capitals.</summary>
    public static string Of(string text) => new([.. text.Where(char.IsLetterOrDigit).Select(char.ToLowerInvariant)]);
}
