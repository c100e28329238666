using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Papers;

/// <summary>A paper that was made.</summary>
/// <param name="Document">Its pages.</param>
/// <param name="Warnings">What must be minded before it is handed out.</param>
public record MadePaper(PaperDocument Document, IReadOnlyList<string> Warnings) : PaperOutcome
{
    // Copies of the record share it, as they share the document.
    private readonly Lazy<byte[]> pdf = new(() => PdfDrawing.Draw(Document));

    /// <summary>Its PDF for people, drawn once: what was measured is what goes out.</summary>
    public byte[] Pdf() => pdf.Value;
}
