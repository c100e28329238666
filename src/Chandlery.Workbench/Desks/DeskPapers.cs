using System.Diagnostics;
using System.Text;
using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Core.Making;
using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Files;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Scenes;
using Chandlery.Register;
using Chandlery.Workbench.Answers;
using Chandlery.Yaml;

namespace Chandlery.Workbench.Desks;

/// <summary>Papers of the candle on the desk.</summary>
internal static class DeskPapers
{
    private const double Dpi = 300;

    /// <summary>The paper that the page asks for; a reason in words where there is none.</summary>
    public static PaperOutcome Make(Workroom room, CandleDesk desk, Assessment a, PaperKind paper, PaperWish wish)
    {
        IReadOnlyList<Language> languages = paper.LanguagesOf(a);
        Language language = languages.FirstOrDefault(l => l.Code == wish.Language) ?? languages[0];
        return paper.Make(Request(room, desk, a, language, room.Brand) with { Settings = SettingsOf(wish) });
    }

    /// <summary>What a paper of an assessed candle is made of.</summary>
    public static PaperRequest Request(Workroom room, CandleDesk desk, Assessment a, Language language, Lazy<BrandKit> brand) =>
        new(a, language, desk.WaxOf(a), room.Lawbook, room.Shop, new PaperSettings())
        {
            Catalogue = desk.Catalogue,
            OpensBrand = brand,
            OpensPicture = PictureFiles.WhenAsked(a.Candle),
            FindsRegisterHead = new Lazy<string?>(() => RegisterHead.LineOf(room.Root)),
            FindsEarlier = new Lazy<EarlierVersion?>(() => EarlierEntry.Of(room.Lawbook, a, desk.Catalogue, room.Register)),
        };

    private static PaperSettings SettingsOf(PaperWish wish) => new(Math.Clamp(wish.Count ?? 1, 1, PouringPlan.MostCandles));

    /// <summary>The assessment that a paper is made of; null when the candle cannot be assessed.</summary>
    public static Assessment? Chosen(CandleDesk desk, string? edition) =>
        desk.Assessments.FirstOrDefault(a => a.Edition.Id == edition) ?? (desk.Assessments.Count > 0 ? desk.Assessments[0] : null);

    /// <summary>The paper that the page asks for; refused with the reason in words.</summary>
    public static Parsed<MadePaper> Made(Workroom room, CandleDesk desk, PaperWish wish)
    {
        PaperKind? paper = wish.Kind is { } kind ? room.Papers.Find(kind) : room.Papers.All[0];
        if (paper is null)
        {
            return Parsed.Not<MadePaper>("There is no such paper.");
        }

        if (Chosen(desk, wish.Edition) is not { } a)
        {
            return Parsed.Not<MadePaper>("The candle cannot be assessed; see the problems.");
        }

        return Make(room, desk, a, paper, wish) switch
        {
            MadePaper made => Parsed.As(made),
            MissingPaper missing => Parsed.Not<MadePaper>(Sentence(paper, missing)),
            _ => throw new UnreachableException(),
        };
    }

    /// <summary>The paper that the page asks for, to look at.</summary>
    public static PreviewAnswer Preview(Workroom room, CandleDesk desk, PaperWish wish)
    {
        Parsed<MadePaper> made = Made(room, desk, wish);
        return made.Success
            ? new PreviewAnswer([.. Pages(made.Value.Document)], made.Value.Warnings, null)
            : new PreviewAnswer([], [], made.Reason);
    }

    /// <summary>A document's pages, to look at.</summary>
    public static IEnumerable<PreviewPage> Pages(PaperDocument document) =>
        document.Pages.Select(p => new PreviewPage(p.WidthMm, p.HeightMm, SvgDrawing.Draw(p, document.Title)));

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
