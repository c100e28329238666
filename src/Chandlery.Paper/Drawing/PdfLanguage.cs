using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Chandlery.Paper.Drawing;

/// <summary>
/// Tells a PDF's language. The engine has no way to, so the document's catalog is written again with a Lang entry in an
/// incremental update (ISO 32000-1, 7.5.6 and 14.9.2).
/// </summary>
internal static partial class PdfLanguage
{
    /// <summary>The PDF with its language.</summary>
    public static byte[] Add(byte[] pdf, string language)
    {
        // Latin-1 keeps a byte a character, so offsets in the text are offsets in the file.
        string text = Encoding.Latin1.GetString(pdf);
        int trailerAt = text.LastIndexOf("trailer", StringComparison.Ordinal);
        Match root = Root().Match(text, trailerAt);
        Match size = Size().Match(text, trailerAt);
        Match info = Info().Match(text, trailerAt);
        Match previous = StartXref().Match(text, trailerAt);
        string number = root.Groups[1].Value;
        Match catalog = Regex.Match(
            text,
            $@"(?<=[\r\n]){number} 0 obj\s*<<(.*?)>>\s*endobj",
            RegexOptions.Singleline | RegexOptions.CultureInvariant
        );
        if (!root.Success || !size.Success || !previous.Success || !catalog.Success)
        {
            throw new InvalidOperationException("the drawing engine wrote a PDF whose catalog was not found");
        }

        var update = new StringBuilder();
        update.Append('\n');
        int offset = pdf.Length + 1;
        update.Append(CultureInfo.InvariantCulture, $"{number} 0 obj\n<<{catalog.Groups[1].Value}\n/Lang ({language})>>\nendobj\n");
        int xref = pdf.Length + update.Length;
        update.Append(CultureInfo.InvariantCulture, $"xref\n{number} 1\n{offset:0000000000} 00000 n \n");
        string infoEntry = info.Success ? $"\n/Info {info.Groups[1].Value} 0 R" : "";
        update.Append(
            CultureInfo.InvariantCulture,
            $"trailer\n<</Size {size.Groups[1].Value}\n/Root {number} 0 R{infoEntry}\n/Prev {previous.Groups[1].Value}>>\nstartxref\n{xref}\n%%EOF\n"
        );
        return [.. pdf, .. Encoding.Latin1.GetBytes(update.ToString())];
    }

    [GeneratedRegex(@"/Root ([0-9]+) 0 R")]
    private static partial Regex Root();

    [GeneratedRegex(@"/Size ([0-9]+)")]
    private static partial Regex Size();

    [GeneratedRegex(@"/Info ([0-9]+) 0 R")]
    private static partial Regex Info();

    [GeneratedRegex(@"startxref\s+([0-9]+)")]
    private static partial Regex StartXref();
}
