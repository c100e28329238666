using System.Globalization;
using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Tables;

/// <summary>Takes away the running numbers that some tables give their rows.</summary>
internal static class RowNumbers
{
    private const int Fewest = 2;
    private const double WidestOfTypeSize = 2;

    /// <summary>The lines without them; the same lines when they have none.</summary>
    /// <remarks>
    /// Row numbers are the only words of the leftmost column, and count 1, 2, 3 and so on without a gap; a column that is too narrow for
    /// them breaks them, so that "10" stands in two lines.
    /// </remarks>
    public static IEnumerable<TextLine> Without(IReadOnlyList<TextLine> body)
    {
        double widest = WidestOfTypeSize * body.Select(l => l.Words[0].TypeSize).DefaultIfEmpty(0).Max();
        double leftmost = body.Select(l => l.Frame.Left).DefaultIfEmpty(0).Min();
        List<TextLine> numbered = [.. body.Where(l => NumberOf(l) is not null && l.Frame.Left < leftmost + widest)];
        if (numbered.Count < Fewest || !Counts(string.Concat(numbered.Select(l => NumberOf(l)))))
        {
            return body;
        }

        double right = numbered.Max(l => l.Words[0].Box.Right);
        double left = numbered.Min(l => l.Words[0].Box.Left);
        bool isColumn =
            right - left < widest
            && body.All(l => numbered.Contains(l) || l.Frame.Left > right || !IsLevelWith(l, left - widest, right + widest));
        return isColumn
            ? body.Select(l => numbered.Contains(l) ? (l.Words.Count > 1 ? l.Only([.. l.Words.Skip(1)]) : null) : l).OfType<TextLine>()
            : body;
    }

    private static bool Counts(string figures)
    {
        int at = 0;
        for (int next = 1; at < figures.Length; next++)
        {
            string expected = next.ToString(CultureInfo.InvariantCulture);
            if (!figures.AsSpan(at).StartsWith(expected, StringComparison.Ordinal))
            {
                return false;
            }

            at += expected.Length;
        }

        return at > 1;
    }

    // Notes under a row may begin as far left as the numbers do; a cell of the first column may not.
    private static bool IsLevelWith(TextLine line, double left, double right) =>
        line.Phrases()[0].Words.Count == 1 && line.Words[0].Box.Left >= left && line.Words[0].Box.Right <= right;

    private static int? NumberOf(TextLine line) =>
        int.TryParse(line.Words[0].Text.Trim('.', ')', '('), NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : null;
}
