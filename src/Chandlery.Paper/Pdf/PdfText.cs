using System.Text;

namespace Chandlery.Paper.Pdf;

/// <summary>Names and texts of PDF objects.</summary>
internal static class PdfText
{
    /// <summary>A text that people read: as it is in ASCII, else in UTF-16 (ISO 32000-1, 7.9.2.2).</summary>
    public static string Of(string text)
    {
        if (text.AsSpan().ContainsAnyExceptInRange(' ', '~'))
        {
            return $"<FEFF{Hex(text)}>";
        }

        return text.AsSpan().ContainsAny('(', ')', '\\')
            ? $"({text.Replace("\\", "\\\\").Replace("(", "\\(").Replace(")", "\\)")})"
            : $"({text})";
    }

    /// <summary>The UTF-16 of a text in hexadecimal figures.</summary>
    public static string Hex(string text) => Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text));

    /// <summary>A name; what is no plain letter is written by its code (ISO 32000-1, 7.3.5).</summary>
    public static string Name(string name)
    {
        var written = new StringBuilder("/");
        foreach (byte b in Encoding.UTF8.GetBytes(name))
        {
            written.Append(
                char.IsAsciiLetterOrDigit((char)b) || b is (byte)'-' or (byte)'_' or (byte)'.' or (byte)'+' ? $"{(char)b}" : $"#{b:X2}"
            );
        }

        return written.ToString();
    }
}
