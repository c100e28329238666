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
