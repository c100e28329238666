using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Core.SafetyFiles.TechnicalFiles;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Papers.Records;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.TechnicalFiles;

/// <summary>The technical file of a candle. It is made of a candle that must not be sold too, and says so: there it is needed most.</summary>
public sealed class TechnicalFilePaper() : PaperKind("technical-file", "Technical file")
{
    private const string Picture = "picture";

    /// <inheritdoc/>
    public override bool IsInDossier => false;

    /// <summary>Burn tests, batches and their lots. Dispatches and incidents stay outside: they name persons.</summary>
    public override IEnumerable<IDeclaration> AlsoShown(Assessment a, Catalogue catalogue)
    {
        List<Batch> batches = [.. catalogue.BatchesOf(a.Candle)];
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
        PaperOutcome label = new LabelPaper().Make(request);
        Dictionary<string, Scene> drawings = Drawings(request, label as MadePaper);
        TechnicalFileMaker maker = Maker(
            request,
            request.FindsEarlier.Value,
            [
                .. drawings
                    .Keys.Where(name => name != Picture)
                    .Select(name => new SheetDrawing(
                        name,
                        $"The label of {request.Assessment.Candle.Name} as it is printed, smaller where it finds no room; its text stands in the tables of this file."
                    )),
            ],
            (label as MissingPaper)?.Why ?? ""
        );
        return Outcome(
            RecordDocument.Make(maker.Make(), request.Shop, problems, drawings),
            problems,
            [.. maker.Missing.Select(m => $"Missing: {m}")]
        );
    }

    /// <summary>What the file finds, without drawing it.</summary>
    public static TechnicalFileReport Report(PaperRequest request) => Maker(request, null, [], "").Report;

    private static TechnicalFileMaker Maker(
        PaperRequest request,
        EarlierVersion? earlier,
        IReadOnlyList<SheetDrawing> labels,
        string noLabel
    ) =>
        new(request.Assessment, request.Catalogue, request.Lawbook, request.Settings.Revision)
        {
            Earlier = earlier,
            RegisterHead = request.FindsRegisterHead.Value ?? "",
            Picture = request.OpensPicture.Value is null
                ? null
                : new SheetDrawing(Picture, $"Picture of {request.Assessment.Candle.Name}."),
            Labels = labels,
            NoLabel = noLabel,
        };

    private static Dictionary<string, Scene> Drawings(PaperRequest request, MadePaper? label)
    {
        var drawings = new Dictionary<string, Scene>();
        for (int i = 0; i < label?.Document.Pages.Count; i++)
        {
            drawings[$"label-{i + 1}"] = label.Document.Pages[i];
        }

        if (request.OpensPicture.Value is { } picture)
        {
            drawings[Picture] = picture;
        }

        return drawings;
    }
}
