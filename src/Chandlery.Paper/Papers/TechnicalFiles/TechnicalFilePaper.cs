using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Paper.Papers.Records;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.TechnicalFiles;

/// <summary>The technical file of a candle. It is made of a candle that must not be sold too, and says so: there it is needed most.</summary>
public sealed class TechnicalFilePaper() : PaperKind("technical-file", "Technical file")
{
    /// <inheritdoc/>
    public override bool IsInDossier => false;

    /// <summary>Burn tests, batches and their lots. Dispatches and incidents stay outside: they name persons.</summary>
    public override IEnumerable<IDeclaration> AlsoShown(Assessment a, Catalogue catalogue)
    {
        List<Batch> batches = [.. catalogue.OfKind<Batch>().Where(b => b.Candle.Id == a.Candle.Id)];
        HashSet<string> lots = [.. batches.SelectMany(b => b.Lots).Select(l => l.Id)];
        return
        [
            .. catalogue.OfKind<Test>().Where(t => t.Candle.Id == a.Candle.Id),
            .. batches,
            .. catalogue.OfKind<Lot>().Where(l => lots.Contains(l.Id)),
        ];
    }

    /// <inheritdoc/>
    protected override string Numbered(PaperSettings settings) =>
        settings.Revision == PaperSettings.FirstRevision ? "" : $"-{settings.Revision}";

    /// <inheritdoc/>
    protected override PaperOutcome Make(PaperRequest request, Problems problems)
    {
        var maker = new TechnicalFileMaker(request.Assessment, request.Catalogue, request.Lawbook, request.Settings.Revision);
        return Outcome(
            RecordDocument.Make(maker.Make(), request.Shop, problems),
            problems,
            [.. maker.Missing.Select(m => $"Missing: {m}")]
        );
    }
}
