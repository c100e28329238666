using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Paper.Papers.Records;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.TechnicalFiles;

/// <summary>The technical file of a candle. It is made of a candle that must not be sold too, and says so: there it is needed most.</summary>
public sealed class TechnicalFilePaper() : PaperKind("technical-file", "Technical file")
{
    /// <inheritdoc/>
    public override bool IsInDossier => false;

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
