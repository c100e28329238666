using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Procedures;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.Procedures;

/// <summary>
/// How a maker looks after the safety of products, on one page to be signed. It is the maker's and not the product's: the product says
/// in which languages, and by the law of which places.
/// </summary>
public sealed class ProcedurePaper() : PaperKind("procedure", "Product-safety procedure")
{
    private const double LineSpacing = 1.25;
    private const double PictogramMm = 14;
    private const double StepMm = 0.05;

    /// <inheritdoc/>
    public override bool IsPerLanguage => true;

    /// <inheritdoc/>
    public override bool IsOfMaker => true;

    /// <summary>False: it is no paper of one product.</summary>
    public override bool IsInDossier => false;

    /// <inheritdoc/>
    protected override PaperOutcome Make(PaperRequest request, Problems problems)
    {
        SafetyWords? own = Words(request);
        SafetyWords words = own ?? request.Lawbook.Safety.ProcedureWords.Find(SafetyWords.Fallback)!;
        SafetyProcedure procedure = new ProcedureMaker(request.Assessment, request.Catalogue, request.Lawbook, words).Make();
        if (request.Shop.Read(ProcedureView.Of(procedure), problems) is not { } document)
        {
            return MissingPaper.Because(problems, isDue: true);
        }

        PaperDocument paper = PageFitter.FitOrCount(
            document,
            request.Shop,
            LineSpacing,
            PictogramMm,
            StepMm,
            (number, count) => ManyPages.Line("", $"{number} / {count}")
        );
        return Outcome(
            paper,
            problems,
            own is null
                ? [$"there are no words for it in {request.Language.Name} yet: it is in English, and a translation is yours to add."]
                : []
        );
    }

    /// <inheritdoc/>
    protected override Language LanguageOf(PaperRequest request, int page) =>
        Words(request) is null ? request.Lawbook.FindLanguage(SafetyWords.Fallback)! : request.Language;

    private static SafetyWords? Words(PaperRequest request) => request.Lawbook.Safety.ProcedureWords.Find(request.Language.Code);
}
