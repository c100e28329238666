using System.Text;
using Chandlery.Paper.Drawing;

namespace Chandlery.Paper.Pdf;

/// <summary>Files inside a PDF (ISO 32000-1, 7.11.4), tied to the document as ISO 19005-3 asks.</summary>
internal static class AttachedFiles
{
    /// <summary>Writes them.</summary>
    /// <returns>Entries of the catalog; empty without files.</returns>
    public static string Write(PdfFile file, IReadOnlyList<PdfAttachment> attachments)
    {
        var names = new StringBuilder();
        var all = new StringBuilder();
        foreach (PdfAttachment attachment in attachments.OrderBy(a => a.Name, StringComparer.Ordinal))
        {
            int stream = file.AddPacking(
                $"/Type/EmbeddedFile/Subtype{PdfText.Name(attachment.MediaType)}/Params<</Size {attachment.Bytes.Length}/ModDate{DocumentFacts.FixedDay}>>",
                attachment.Bytes
            );
            string name = PdfText.Of(attachment.Name);
            int specification = file.Add(
                new ByteText().Put(
                    $"<</Type/Filespec/F{name}/UF{name}/Desc{PdfText.Of(attachment.Description)}/AFRelationship/Source/EF<</F {stream} 0 R/UF {stream} 0 R>>>>"
                )
            );
            string reference = $"{specification} 0 R ";
            names.Append(name).Append(reference);
            all.Append(reference);
        }

        return attachments.Count == 0 ? "" : $"/AF[{all}]/Names<</EmbeddedFiles<</Names[{names}]>>>>";
    }
}
