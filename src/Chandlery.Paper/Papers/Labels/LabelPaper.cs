using Chandlery.Core.Declared;
using Chandlery.Paper.Designs;
using Chandlery.Paper.Proofs;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>The label.</summary>
public sealed class LabelPaper() : PaperKind("label", "Label")
{
    /// <inheritdoc/>
    public override bool NeedsSale => true;

    /// <inheritdoc/>
    public override bool IsRegistered => true;

    // What stands on a label is what the law and the maker put there: a remark of the program's among warnings would take their room and
    // be read as one of them. It is said beside the label when it is made, and on every other paper.
    /// <inheritdoc/>
    protected override bool SaysWhatIsLeftOut => false;

    /// <inheritdoc/>
    protected override PaperOutcome Make(PaperRequest request, Problems problems) =>
        MeasuredPaper.Of(request.Assessment, Unmeasured(request, problems));

    private static PaperOutcome Unmeasured(PaperRequest request, Problems problems)
    {
        if (!TakesFront(request.Assessment.Candle) || request.Design is not { } design)
        {
            return LawAlone(request, "", problems);
        }

        problems.AddRange(request.Brand.Problems);
        if (!problems.None)
        {
            return MissingPaper.Because(problems, isDue: true);
        }

        DesignShelf designs = request.Shop.Designs;
        if (!designs.Names.Contains(design))
        {
            problems.Add(
                request.Assessment.Candle.Design?.Place ?? request.Brand.Brand!.Place,
                $"There is no design '{design}'.",
                designs.Remedy(design)
            );
            return MissingPaper.Because(problems, isDue: true);
        }

        if (Lacking(request) is { Count: > 0 } lacking)
        {
            return new MissingPaper(
                $"the brand's font has no {string.Join(", ", lacking)}: choose a face that has what the candle's name needs, or another name.",
                IsDue: true,
                []
            );
        }

        if (request.Assessment.Candle.Label is { Form: LabelForm.Strip } strip)
        {
            return StripLabel.Make(request, strip, design, problems);
        }

        if (DesignedLabel.Make(request, design, FormOf(request.Assessment.Candle), problems) is { } made)
        {
            return made with { Warnings = [.. CoarseLogo(request, made)] };
        }

        // A candle that asks for a front gets none without it; a brand's front for all its candles may be left out where it finds no room.
        return !problems.None ? MissingPaper.Because(problems, isDue: true)
            : request.Assessment.Candle.Design is null ? LawAlone(request, NoRoom, problems)
            : new MissingPaper($"{NoRoom}.", IsDue: true, []);
    }

    private const string NoRoom =
        "front and legal panel find no room together: a larger label, 'as: pair' (a front and a back) or fewer languages on one label would help";

    // A front stands beside the law on a rectangle, or with it on a band; on an arch and an outline above it, or on a label of its own.
    // Other shapes carry the law alone.
    private static bool TakesFront(Candle candle) =>
        candle.Label
            is null
                or { Form: LabelForm.Rectangle, Corner.Value: <= DesignedLabel.LargestCornerMm }
                or { Form: LabelForm.Band or LabelForm.Strip }
        || (candle.Design?.Form != DesignForm.Wrap && candle.Label is { Form: LabelForm.Arch } or { Outline: not null });

    private static DesignForm FormOf(Candle candle) =>
        candle.Label is { Form: LabelForm.Band } ? DesignForm.Wrap : candle.Design?.Form ?? DesignForm.One;

    // Pictures of fewer dots show their steps in print (common practice of printers, no source).
    private const double LeastDotsPerInch = 300;

    private static IEnumerable<string> CoarseLogo(PaperRequest request, MadeLabel made) =>
        made
            .Document.Pages.SelectMany(p => p.All)
            .OfType<PictureItem>()
            .Where(p => p.Pixels == request.Brand.Logo?.Pixels && p.DotsPerInch < LeastDotsPerInch)
            .Take(1)
            .Select(p =>
                $"the logo has {Math.Floor(p.DotsPerInch)} dots an inch at its printed size, and its steps will be seen: {LeastDotsPerInch} are usual; an SVG has no such limit."
            );

    private static IReadOnlyList<string> Lacking(PaperRequest request) =>
        request.Brand.NameFace?.Lacks(request.Assessment.Candle.Name) ?? [];

    private static PaperOutcome LawAlone(PaperRequest request, string remark, Problems problems)
    {
        if (request.Assessment.Candle.Label is { Form: LabelForm.Strip } strip)
        {
            return StripLabel.Make(request, strip, null, problems);
        }

        if (request.Assessment.Candle.Label is { Form: LabelForm.Outline, Outline: null })
        {
            return new MissingPaper(
                "the file with the label's outline is read when the candle is a file of the folder: save it first.",
                IsDue: true,
                []
            );
        }

        return LabelDocument.Make(request.Assessment, request.Shop, request.Lawbook.Burning, problems) switch
        {
            FittedLabel fitted => new MadeLabel(
                new PaperDocument(request.Assessment.Candle.Name, request.Assessment.Languages[0].Code, fitted.Pages),
                fitted.LeftOff.Select(l => l.Code.Text).ToHashSet()
            )
            {
                Warnings = remark.Length == 0 ? [] : [$"{remark}; this is the legal panel alone."],
            },
            Misfit misfit => new MissingPaper(WhyNot(misfit), IsDue: true, []),
            _ => MissingPaper.Because(problems, isDue: true),
        };
    }

    private static string WhyNot(Misfit misfit) =>
        $"the text does not fit a label of {misfit.Shape.Request}: {Lacking(misfit)}{Helping(misfit)}".TrimEnd();

    private static string Helping(Misfit misfit) =>
        misfit.Remedies.Count == 0 ? "" : $"What would help: {string.Join("; ", misfit.Remedies).TrimEnd('.')}.";

    private static string Lacking(Misfit misfit)
    {
        var parts = new List<string>();
        if (misfit.MissingHeight.Value > 0)
        {
            parts.Add($"{misfit.MissingHeight} of height");
        }

        if (misfit.MissingWidth.Value > 0)
        {
            parts.Add($"{misfit.MissingWidth} of width");
        }

        return parts.Count == 0 ? "" : $"{string.Join(" and ", parts)} missing at the smallest lawful text. ";
    }
}
