using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Pdf;

/// <summary>Writes a document: pages front to back, then what they share, fonts last.</summary>
internal static class DocumentWriter
{
    /// <summary>The PDF's bytes.</summary>
    /// <param name="document">The document.</param>
    /// <param name="purpose">What it is for.</param>
    /// <param name="attachments">Files inside it; for an archive only.</param>
    public static byte[] Write(PaperDocument document, PdfPurpose purpose, IReadOnlyList<PdfAttachment> attachments)
    {
        bool isPress = purpose == PdfPurpose.Press;

        // Presses are told nothing that PDF 1.3 does not know, by which ISO 15930-1 stands: object streams came later.
        var file = isPress ? new PdfFile("1.3", packed: false) : new PdfFile("1.7", packed: true);
        DocumentParts parts = Taken(document, isPress ? new PressPalette() : new ScreenPalette());
        int pageTree = file.Reserve();
        int resources = file.Reserve();
        StructureTree? structure = isPress ? null : new StructureTree(file);
        var pages = new ByteText();

        // Drawing and packing a page concerns no other page.
        InTurn.Each(
            document.Pages,
            scene => PageContent.Draw(scene, parts, purpose),
            page => pages.Put(WritePage(file, page, pageTree, structure)).Put(" 0 R ")
        );

        file.Add(
            pageTree,
            new ByteText().Put($"<</Type/Pages/Count {document.Pages.Count}/Resources {resources} 0 R/Kids[").Put(pages.Written).Put("]>>")
        );
        string entries = OutputIntents.Write(file, purpose) + AttachedFiles.Write(file, attachments);
        if (structure is not null)
        {
            entries += structure.Finish() + $"/Lang{PdfText.Of(document.Language)}/Metadata {Metadata(file, document, purpose)} 0 R";
        }

        int information = file.Add(DocumentFacts.Information(document, purpose));
        int catalog = file.Add(new ByteText().Put($"<</Type/Catalog/Pages {pageTree} 0 R{entries}>>"));
        parts.Write(file, resources);
        return file.Finish($"/Root {catalog} 0 R/Info {information} 0 R");
    }

    private static DocumentParts Taken(PaperDocument document, IPalette palette)
    {
        var parts = new DocumentParts(palette);
        foreach (Scene page in document.Pages)
        {
            parts.Take(page.Items);
            if (page.CutPath is not null)
            {
                palette.Take(Ink.CutLine);
            }
        }

        return parts;
    }

    private static int WritePage(PdfFile file, PageContent page, int pageTree, StructureTree? structure)
    {
        int content = file.AddStream("/Filter/FlateDecode", page.Packed);
        int number = file.Reserve();
        string entries = structure?.Add(number, page) ?? "";
        file.Add(number, new ByteText().Put($"<</Type/Page/Parent {pageTree} 0 R/Contents {content} 0 R{page.Boxes}{entries}>>"));
        return number;
    }

    // An archive's metadata must be legible to those who cannot unpack.
    private static int Metadata(PdfFile file, PaperDocument document, PdfPurpose purpose)
    {
        byte[] xmp = DocumentFacts.Xmp(document, purpose);
        const string Entries = "/Type/Metadata/Subtype/XML";
        return purpose == PdfPurpose.Archive ? file.AddStream(Entries, xmp) : file.AddPacking(Entries, xmp);
    }
}
