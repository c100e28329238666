using Chandlery.Core.Labelled;
using Chandlery.Core.Law;

namespace Chandlery.Core.SafetyDataSheets.Parts;

/// <summary>The label's elements: pictograms, signal word, statements, and the names of the substances behind them.</summary>
internal sealed class LabelElementsPart : ISheetPart
{
    /// <inheritdoc/>
    public SheetPart Name => SheetPart.LabelElements;

    /// <inheritdoc/>
    public IEnumerable<SheetBlock> Make(SheetContext context)
    {
        LabelElements label = context.Assessment.Label;
        Language language = context.Language;
        if (label.Pictograms.Count > 0)
        {
            yield return new SheetPictograms([.. label.Pictograms.Select(p => p.Code)]);
        }

        if (label.SignalWord is { } word)
        {
            yield return new SheetText(language.Words[word.Code.Key], Strong: true);
        }

        yield return new SheetTable(
            [18, 82],
            [],
            [
                .. label
                    .Hazard.Concat(label.Supplemental)
                    .Concat(label.Precautionary)
                    .Select(s => new[] { CodeOf(s.Code), StatementText.Printed(language, s.Code, label) }),
            ]
        );
        List<string> names = [.. label.Contained.Select(n => n.Name)];
        if (names.Count > 0)
        {
            yield return new SheetText(StatementText.Contains(language, names));
        }
    }

    private static string CodeOf(string code) => code.StartsWith("GHS-", StringComparison.Ordinal) ? "-" : code;
}
