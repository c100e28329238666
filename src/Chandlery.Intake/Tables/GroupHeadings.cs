using Chandlery.Intake.Pages;
using Chandlery.Intake.Wording;

namespace Chandlery.Intake.Tables;

/// <summary>
/// Headings of several rows ("Fragrances", "Solvents") that no ruled line parts from the rows: a line of a few words where the table
/// begins on the left, which stands off from the lines above and below as rows do, or which stands right above the first line of a row in
/// a table whose rows all begin on their first line, or which is words where only figures may stand.
/// </summary>
/// <param name="columns">The table's columns.</param>
/// <param name="wording">How shares and notes are written.</param>
/// <param name="hazards">How classes are written.</param>
internal sealed class GroupHeadings(IReadOnlyList<Column> columns, SheetWording wording, HazardText hazards)
{
    private const int LongestHeading = 40;
    private const int ShortestNoteLabel = 2;
    private const double ClearlyWider = 1.2;
    private const double Wider = 1.1;
    private const double Nearly = 0.9;
    private const double SameEdgeMm = 1;
    private static readonly string[] OfFigures = [ColumnKind.Cas, ColumnKind.Ec, ColumnKind.Share, ColumnKind.From, ColumnKind.To];
    private static readonly string[] NoteLabels = ["ate", "m", "limits"];

    /// <summary>The lines without such headings, of which the next line knows.</summary>
    /// <param name="lines">Lines of the table on one page.</param>
    public List<BodyLine> Cut(IReadOnlyList<BodyLine> lines)
    {
        if (lines.Count == 0)
        {
            return [];
        }

        double left = lines.Min(l => l.Line.Frame.Left);
        double pitch = Pitch(lines);
        var kept = new List<BodyLine>();
        string? heading = null;
        for (int i = 0; i < lines.Count; i++)
        {
            if (i + 1 < lines.Count && IsLikeHeading(lines[i], left) && StandsAlone(lines, i, left, pitch))
            {
                heading = heading is null ? lines[i].Line.Text : heading + " " + lines[i].Line.Text;
                continue;
            }

            kept.Add(heading is null ? lines[i] : lines[i] with { Heading = heading });
            heading = null;
        }

        return kept;
    }

    private bool IsLikeHeading(BodyLine line, double left)
    {
        string text = line.Line.Text;
        string plain = Phrase.Plain(text);
        return text.Length <= LongestHeading
            && char.IsUpper(text[0])
            && text[^1] is not ('-' or ',')
            && !text.Any(char.IsAsciiDigit)
            && line.Line.Frame.Left < left + SameEdgeMm
            && line.Line.Phrases().Count == 1
            && (line.Spans || line.Cells.Count(c => c is not null) == 1)
            && !hazards.Says(text)
            && !hazards.NamesEstimate(text)
            && !NoteLabels.SelectMany(k => wording.Labels[k]).Any(l => l.Length > ShortestNoteLabel && Phrase.IsIn(l, plain))
            && !ShareText.Read(text, wording, false).Success;
    }

    private bool StandsAlone(IReadOnlyList<BodyLine> lines, int at, double left, double pitch)
    {
        double before = at == 0 ? double.PositiveInfinity : Gap(lines, at);
        double after = Gap(lines, at + 1);
        int column = lines[at].Spans ? -1 : lines[at].Cells.ToList().FindIndex(c => c is not null);
        bool isOfFigures = column >= 0 && columns[column].Kinds.Count > 0 && columns[column].Kinds.All(OfFigures.Contains);
        return (before > ClearlyWider * pitch && after > ClearlyWider * pitch)
            || (isOfFigures && before > Nearly * pitch && after > Nearly * pitch)
            || (column >= 0 && before > Wider * after && BeginsRow(lines[at + 1], column) && BeginAtTop(lines, column, left, pitch));
    }

    private static double Gap(IReadOnlyList<BodyLine> lines, int at) => lines[at].Line.Frame.Bottom - lines[at - 1].Line.Frame.Bottom;

    // The first line of a row has a share in it.
    private bool BeginsRow(BodyLine line, int column) => line.Cells[column] is not null && HasShare(line);

    private bool HasShare(BodyLine line) =>
        Enumerable.Range(0, columns.Count).Any(c => line.Cells[c] is not null && columns[c].Kinds.Intersect(ColumnKind.OfShares).Any());

    // A cell that goes on below the line with the share tells that rows do not end on that line; and nothing but such headings, above fewer
    // than every second row, stands close above a share, as the upper lines of cells do that have one middle.
    private bool BeginAtTop(IReadOnlyList<BodyLine> lines, int column, double left, double pitch)
    {
        List<int> shares = [.. Enumerable.Range(0, lines.Count).Where(i => HasShare(lines[i]))];
        List<int> covered = [.. shares.Where(i => i > 0 && Gap(lines, i) < Wider * pitch)];
        return 2 * covered.Count <= shares.Count
            && covered.All(i => IsLikeHeading(lines[i - 1], left))
            && Enumerable
                .Range(0, lines.Count - 1)
                .Any(i =>
                    BeginsRow(lines[i], column)
                    && lines[i + 1].Cells[column] is not null
                    && !HasShare(lines[i + 1])
                    && Gap(lines, i + 1) < Wider * pitch
                );
    }

    // How far apart the lines of one cell stand: the least that two lines of one column do.
    private double Pitch(IReadOnlyList<BodyLine> lines) =>
        Enumerable
            .Range(0, columns.Count)
            .SelectMany(c =>
            {
                List<TextLine> own = [.. lines.Select(l => l.Cells[c]).OfType<TextLine>()];
                return own.Zip(own.Skip(1), (a, b) => b.Frame.Bottom - a.Frame.Bottom);
            })
            .Where(step => step > Nearly * lines[0].Line.Words[0].TypeSize)
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();
}
