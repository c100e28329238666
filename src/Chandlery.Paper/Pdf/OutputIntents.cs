using Chandlery.Paper.Drawing;

namespace Chandlery.Paper.Pdf;

/// <summary>For which way of printing or showing colours are meant (ISO 32000-1, 14.11.5).</summary>
internal static class OutputIntents
{
    // A characterisation that the ICC registers by this name needs no profile inside (ISO 15930-1).
    private const string Press =
        "/OutputIntents[<</Type/OutputIntent/S/GTS_PDFX/OutputConditionIdentifier(FOGRA39)/OutputCondition(Coated FOGRA39)"
        + "/RegistryName(http://www.color.org)/Info(Coated FOGRA39, offset printing after ISO 12647-2)>>]";

    /// <summary>Entries of the catalog.</summary>
    /// <param name="file">Receives the profile where one is needed.</param>
    /// <param name="purpose">What the file is for.</param>
    public static string Write(PdfFile file, PdfPurpose purpose) =>
        purpose switch
        {
            PdfPurpose.Press => Press,
            PdfPurpose.Archive => "/OutputIntents[<</Type/OutputIntent/S/GTS_PDFA1/OutputConditionIdentifier(sRGB IEC61966-2.1)"
                + $"/Info(sRGB after IEC 61966-2-1)/DestOutputProfile {file.AddPacking("/N 3", SrgbProfile.Make())} 0 R>>]",
            _ => "",
        };
}
