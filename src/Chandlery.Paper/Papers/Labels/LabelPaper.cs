using Chandlery.Core.Declared;
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

    /// <inheritdoc/>
    protected override PaperOutcome Make(PaperRequest request, Problems problems)
    {
        return request.Design is { } design ? WithFront(request, design, problems) : LawAlone(request, problems);
    }

    private static PaperOutcome WithFront(PaperRequest request, string design, Problems problems)
    {
        IReadOnlyList<string> known = request.Shop.Designs.Names;
        if (!known.Contains(design))
        {
            problems.Add(
                request.Assessment.Candle.Design?.Place ?? request.Brand.Brand!.Place,
                $"There is no design '{design}'.",
                Suggestion.Nearest(design, known) is { } near ? $"Did you mean '{near}'?" : $"Designs: {string.Join(", ", known)}."
            );
            return MissingPaper.Because(problems, isDue: true);
        }

        DesignForm form = request.Assessment.Candle.Design?.Form ?? DesignForm.One;
        if (DesignedLabel.Make(request, design, form, problems) is { } made)
        {
            return made;
        }

        return problems.None
            ? new MissingPaper(
                "front and legal panel find no room together: ask for a larger label, for 'as: pair' (a front and a back), or for fewer languages on one label.",
                IsDue: true,
                []
            )
            : MissingPaper.Because(problems, isDue: true);
    }

    private static PaperOutcome LawAlone(PaperRequest request, Problems problems)
    {
        if (LabelDocument.Make(request.Assessment, request.Shop, request.Lawbook.Burning, problems) is not { } label)
        {
            return MissingPaper.Because(problems, isDue: true);
        }

        return label.Fitted is { } fitted
            ? new MadeLabel(
                new PaperDocument(request.Assessment.Candle.Name, request.Assessment.Languages[0].Code, fitted.Pages),
                label.LeftOff.Select(l => l.Code.Text).ToHashSet()
            )
            : new MissingPaper(WhyNot(label.Misfit!), IsDue: true, []);
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
