using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Chandlery.Paper.Proofs.Reading;

/// <summary>Reads the files that an archive's PDF has inside.</summary>
public static class AttachedTexts
{
    /// <summary>The files as texts, each with its name; none where nothing is inside.</summary>
    /// <param name="pdf">The PDF.</param>
    /// <exception cref="FormatException">It is no PDF that can be read.</exception>
    public static IReadOnlyList<(string Name, string Text)> Of(byte[] pdf)
    {
        try
        {
            using PdfDocument document = PdfDocument.Open(pdf);
            return document.Advanced.TryGetEmbeddedFiles(out IReadOnlyList<EmbeddedFile>? files) && files is not null
                ? [.. files.Select(f => (f.Name, Encoding.UTF8.GetString([.. f.Memory.Span])))]
                : [];
        }
        catch (Exception error) when (error is not OutOfMemoryException)
        {
            throw new FormatException("it is no PDF that can be read", error);
        }
    }
}
