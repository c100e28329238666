namespace Chandlery.Core.Law;

/// <summary>What the safety data sheets of all laws share.</summary>
/// <param name="Rows">Sentences and computed parts, in the order of print.</param>
/// <param name="Abbreviations">Abbreviations (the labels) and what they mean.</param>
/// <param name="Phrases">English words that computed parts are put together with.</param>
public sealed record SheetSentences(
    IReadOnlyList<SheetRow> Rows,
    IReadOnlyList<SheetSentence> Abbreviations,
    IReadOnlyDictionary<SheetPhrase, string> Phrases
)
{
    /// <summary>The rows of an edition: its own sentences stand in the stead of those that they replace, or at the end of their subsection.</summary>
    public IReadOnlyList<SheetRow> RowsFor(SafetySheetRules rules) =>
        [
            .. Rows.Select(row =>
                row is SheetSentence shared && rules.Sentences.FirstOrDefault(own => own.Replaces == shared.Key) is { } own ? own : row
            ),
            .. rules.Sentences.Where(s => s.Replaces is null),
        ];
}
