using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Paper.Papers.BenchSheets;
using Chandlery.Paper.Papers.BurnCards;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Papers.PocketCards;
using Chandlery.Paper.Papers.PoisonCentres;
using Chandlery.Paper.Papers.Procedures;
using Chandlery.Paper.Papers.ProductInformation;
using Chandlery.Paper.Papers.SafetyDataSheets;
using Chandlery.Paper.Papers.ShopCards;
using Chandlery.Paper.Papers.TechnicalFiles;
using Chandlery.Paper.Papers.WickTemplates;

namespace Chandlery.Paper.Papers;

/// <summary>The papers there are, in the order in which they are offered. Commands, dossier, page, register and reference read it.</summary>
/// <param name="All">The kinds.</param>
public sealed record PaperList(IReadOnlyList<PaperKind> All)
{
    /// <summary>The program's own papers.</summary>
    public static PaperList Own { get; } =
        new([
            new LabelPaper(),
            new BurnCardPaper(),
            new PocketCardPaper(),
            new ShopCardPaper(),
            new BenchSheetPaper(),
            new WickTemplatePaper(),
            new PoisonFactsPaper(),
            new SafetySheetPaper(),
            new ProductInformationPaper(),
            new TechnicalFilePaper(),
            new ProcedurePaper(),
        ]);

    /// <summary>The papers of a dossier.</summary>
    public IEnumerable<PaperKind> InDossier => All.Where(p => p.IsInDossier);

    /// <summary>The papers of a candle's dossier, each in every language that it is made in.</summary>
    public IEnumerable<(PaperKind Paper, Language Language)> DossierOf(Assessment a) =>
        InDossier.SelectMany(p => p.LanguagesOf(a).Select(l => (p, l)));

    /// <summary>The papers that the page enters in the register.</summary>
    public IEnumerable<PaperKind> Registered => All.Where(p => p.IsRegistered);

    /// <summary>Their short names.</summary>
    public IReadOnlyList<string> Ids { get; } = [.. All.Select(p => p.Id)];

    /// <summary>The paper of a short name; null when there is none.</summary>
    public PaperKind? Find(string id) => All.FirstOrDefault(p => p.Id == id);

    /// <summary>What the papers are called, as words of a sentence.</summary>
    public static string Called(IEnumerable<PaperKind> papers) => string.Join(", ", papers.Select(p => p.Called));
}
