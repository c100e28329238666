using Chandlery.Paper.Pdf;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Drawing;

/// <summary>Draws documents as PDF: text as text in embedded fonts, drawings as paths, the same bytes for the same document.</summary>
public static class PdfDrawing
{
    /// <summary>The bytes of a PDF for people.</summary>
    public static byte[] Draw(PaperDocument document) => Draw(document, PdfPurpose.People);

    /// <summary>The bytes of a PDF for a purpose.</summary>
    public static byte[] Draw(PaperDocument document, PdfPurpose purpose) => DocumentWriter.Write(document, purpose, []);

    /// <summary>The bytes of a PDF for keeping.</summary>
    /// <param name="document">The document.</param>
    /// <param name="attachments">Files that are kept inside it, each name once.</param>
    /// <exception cref="ArgumentException">Two files have the same name.</exception>
    public static byte[] Archive(PaperDocument document, IReadOnlyList<PdfAttachment> attachments)
    {
        string[] twice = [.. attachments.GroupBy(a => a.Name).Where(g => g.Count() > 1).Select(g => g.Key)];
        return twice.Length > 0
            ? throw new ArgumentException($"two files in one PDF are called {string.Join(", ", twice)}", nameof(attachments))
            : DocumentWriter.Write(document, PdfPurpose.Archive, attachments);
    }
}
