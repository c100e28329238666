using System.Text;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Making;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Scenes;
using Chandlery.Workbench.Answers;
using Chandlery.Yaml;

namespace Chandlery.Workbench;

/// <summary>Papers of the candle on the desk.</summary>
internal static class DeskPapers
{
    private const double Dpi = 300;

    /// <summary>The paper that the page asks for; a reason in words where there is none.</summary>
    public static PaperOutcome Make(Workroom room, CandleDesk desk, Assessment a, PaperKind paper, DeskRequest request)
    {
        IReadOnlyList<Language> languages = paper.LanguagesOf(a);
        Language language = languages.FirstOrDefault(l => l.Code == request.Language) ?? languages[0];
        var problems = new Problems();
        if (desk.Catalogue.Find<Wax>(a.Candle.Wax, problems) is not { } wax)
        {
            return MissingPaper.Because(problems, isDue: true);
        }

        var settings = new PaperSettings(Math.Clamp(request.Count ?? 1, 1, PouringPlan.MostCandles));
        return paper.Make(
            new PaperRequest(a, language, wax, room.Lawbook, room.Shop, settings)
            {
                Catalogue = desk.Catalogue,
                OpensBrand = BrandFiles.WhenAsked(desk.Catalogue),
            }
        );
    }

    /// <summary>Why there is no paper, as a sentence.</summary>
    public static string Sentence(PaperKind paper, MissingPaper missing) => $"{paper.Title} not printed: {missing.Why}";

    /// <summary>The papers for the page to offer.</summary>
    public static IReadOnlyList<PaperOffer> Offer(PaperList papers, IReadOnlyList<Assessment> assessments) =>
        [
            .. papers.All.Select(paper => new PaperOffer(
                paper.Id,
                paper.Title,
                paper.TakesCount,
                assessments.ToDictionary(a => a.Edition.Id, a => LanguagesOf(paper, a))
            )),
        ];

    private static IReadOnlyList<PaperLanguage> LanguagesOf(PaperKind paper, Assessment a) =>
        paper.IsPerLanguage ? [.. a.Languages.Select(l => new PaperLanguage(l.Code, l.Name))] : [];

    /// <summary>The document's bytes in a format; PNG and SVG show its first page.</summary>
    public static (byte[] Bytes, string Type) Draw(PaperDocument document, string format) =>
        format switch
        {
            "png" => (PngDrawing.Draw(document.Pages[0], Dpi), "image/png"),
            "svg" => (Encoding.UTF8.GetBytes(SvgDrawing.Draw(document.Pages[0], document.Title)), "image/svg+xml"),
            _ => (PdfDrawing.Draw(document), "application/pdf"),
        };
}
