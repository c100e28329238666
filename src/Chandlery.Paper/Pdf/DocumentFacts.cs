using System.Security;
using System.Text;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Scenes;

namespace Chandlery.Paper.Pdf;

/// <summary>What a document says of itself, twice: in the information dictionary and in XMP (ISO 32000-1, 14.3).</summary>
internal static class DocumentFacts
{
    /// <summary>A fixed day keeps the bytes the same from run to run.</summary>
    public const string FixedDay = "(D:20260101000000Z)";

    private const string FixedDayInXmp = "2026-01-01T00:00:00Z";
    private const string Program = "Chandlery";

    /// <summary>The information dictionary; for a press with what ISO 15930-1 asks for there.</summary>
    public static ByteText Information(PaperDocument document, PdfPurpose purpose)
    {
        string press = purpose == PdfPurpose.Press ? "/Trapped/False/GTS_PDFXVersion(PDF/X-1:2001)/GTS_PDFXConformance(PDF/X-1a:2001)" : "";
        return new ByteText().Put(
            $"<</Title{PdfText.Of(document.Title)}/Creator({Program})/Producer({Program})/CreationDate{FixedDay}/ModDate{FixedDay}{press}>>"
        );
    }

    /// <summary>
    /// What people need of it as XMP: title and language. For an archive all of it, with the part of ISO 19005 whose rules it is made
    /// after.
    /// </summary>
    public static byte[] Xmp(PaperDocument document, PdfPurpose purpose)
    {
        string archive =
            purpose == PdfPurpose.Archive
                ? $"""
                    <rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
                    <pdf:Producer>{Program}</pdf:Producer><xmp:CreatorTool>{Program}</xmp:CreatorTool>
                    <xmp:CreateDate>{FixedDayInXmp}</xmp:CreateDate><xmp:ModifyDate>{FixedDayInXmp}</xmp:ModifyDate>
                    <pdfaid:part>3</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>
                    </rdf:Description>
                    """
                : "";
        string title = SecurityElement.Escape(document.Title);
        string language = SecurityElement.Escape(document.Language);
        return Encoding.UTF8.GetBytes(
            $"""
            <?xpacket begin="{'\uFEFF'}" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
            <dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>
            </rdf:Description>{archive}</rdf:RDF></x:xmpmeta>
            <?xpacket end="w"?>
            """
        );
    }
}
