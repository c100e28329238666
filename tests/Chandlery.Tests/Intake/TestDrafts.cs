using Chandlery.Files;
using Chandlery.Intake.Drafts;
using Chandlery.Intake.Pages;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Intake;

/// <summary>Drafts with the words that the program ships, read once for all tests.</summary>
internal static class TestDrafts
{
    private static readonly Lazy<DraftMaker> Shared = new(() =>
    {
        var problems = new Problems();
        DraftMaker? maker = DraftMaker.Of(ShippedFiles.Data(null, problems), TestLaw.Lawbook.Vocabulary, problems);
        Assert.Empty(problems.Found);
        return maker!;
    });

    /// <summary>The draft of one sheet; nothing may be wrong.</summary>
    public static OilDraft Read(byte[] pdf) => Of(new SupplierPdf("sheet.pdf", pdf, PdfWords.Parse(pdf).Value));

    /// <summary>The draft; nothing may be wrong.</summary>
    public static OilDraft Of(params IReadOnlyList<SupplierPdf> pdfs)
    {
        var problems = new Problems();
        OilDraft? draft = Shared.Value.Make(pdfs, problems);
        Assert.Empty(problems.Found);
        return draft!;
    }

    /// <summary>The draft; null when the PDF is none that is known.</summary>
    public static OilDraft? OrNull(SupplierPdf pdf) => Shared.Value.Make([pdf], new Problems());
}
