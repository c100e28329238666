using System.Text;

namespace Chandlery.Core.SafetyDataSheets;

/// <summary>Fills the marks of a text; what stands in their place is never read for marks itself.</summary>
internal static class MarkText
{
    /// <summary>The text with each {mark} replaced.</summary>
    public static string Fill(string text, Func<string, string> valueOf)
    {
        var filled = new StringBuilder();
        int at = 0;
        while (text.IndexOf('{', at) is var open and >= 0 && text.IndexOf('}', open) is var close and > 0)
        {
            filled.Append(text, at, open - at).Append(valueOf(text[(open + 1)..close]));
            at = close + 1;
        }

        return filled.Append(text, at, text.Length - at).ToString();
    }
}
