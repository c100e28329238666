using System.Text.RegularExpressions;
using Chandlery.Intake.Tables;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Drafts;

/// <summary>
/// Counts what a row's text gives in statements, factors, limits and estimates, wherever in it they stand, against what was read, so
/// that nothing that a line's end or a column's border parted is missing without a word.
/// </summary>
/// <param name="wording">Labels.</param>
/// <param name="hazards">How classes, factors, limits and estimates are written.</param>
internal sealed partial class RowLedger(SheetWording wording, HazardText hazards)
{
    private const int ShortestLabel = 3;
    private static readonly string[] Apart = [ColumnKind.Share, ColumnKind.From, ColumnKind.To, ColumnKind.Old];

    /// <summary>What the row seems to give and was not read.</summary>
    /// <param name="table">The row's table.</param>
    /// <param name="row">The row.</param>
    /// <param name="read">What was read from it.</param>
    public IEnumerable<string> Unread(Table table, Row row, HazardReading read)
    {
        IEnumerable<string> cells = row.Cells.Where((_, i) => !table.Columns[i].Kinds.Intersect(Apart).Any()).Select(c => c.Text);
        string text = string.Join(" ; ", cells.Concat(row.Notes.Select(n => n.Text)).Where(t => t.Length > 0));
        string plain = Phrase.Plain(text);
        int doses = Dose().Count(text);
        if (read.Toxicity.Count < doses || (read.Toxicity.Count == 0 && Names("ate", plain)))
        {
            yield return "the row seems to give an acute toxicity estimate that was not read";
        }

        if (read.M is null && (hazards.ReadM(text) is not null || Names("m", plain)))
        {
            yield return "the row seems to give an M-factor that was not read";
        }

        HashSet<string> codes = [.. Codes(string.Join(' ', (read.Classes ?? []).Concat(read.Limits)))];
        if (Codes(text).FirstOrDefault(c => !codes.Contains(c)) is { } code)
        {
            yield return $"the row prints {code}, which no class that was read has";
        }

        if (read.Limits.Count < Limit().Count(text))
        {
            yield return "the row seems to give a concentration limit that was not read";
        }
    }

    private bool Names(string label, string plain) => wording.Labels[label].Any(l => l.Length >= ShortestLabel && Phrase.IsIn(l, plain));

    private static IEnumerable<string> Codes(string text) => Code().Matches(text).Select(m => m.Value);

    [GeneratedRegex(@"\b(?:EUH|H)[0-9]{3}[A-Za-z]{0,2}\b")]
    private static partial Regex Code();

    [GeneratedRegex(@"mg\s?/\s?kg", RegexOptions.IgnoreCase)]
    private static partial Regex Dose();

    [GeneratedRegex(@"\bC\s?(?:[<>]=?|[≤≥])")]
    private static partial Regex Limit();
}
