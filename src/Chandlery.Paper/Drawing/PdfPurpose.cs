namespace Chandlery.Paper.Drawing;

/// <summary>What a PDF is for. One file cannot serve all: a press wants inks, an archive a colour profile, people a structure.</summary>
public enum PdfPurpose
{
    /// <summary>For people's screens and printers: colours of the screen, tagged for those who hear it.</summary>
    People,

    /// <summary>For a print shop: process and spot inks, bleed, cut line, made after the rules of ISO 15930-1 (PDF/X-1a).</summary>
    Press,

    /// <summary>For keeping: all that is needed to show it is inside, files as well; made after the rules of ISO 19005-3 (PDF/A-3).</summary>
    Archive,
}
