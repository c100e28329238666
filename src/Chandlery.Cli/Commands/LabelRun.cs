using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.LabelSheets;
using Chandlery.Paper.Scenes;

namespace Chandlery.Cli.Commands;

/// <summary>How many labels of a candle are printed, and as what.</summary>
/// <param name="Copies">Labels of each candle.</param>
/// <param name="NumberFrom">Number of the first label of each candle; null for labels without numbers.</param>
/// <param name="AsPdf">Whether a roll is printed as PDF.</param>
internal sealed record LabelRun(int Copies, int? NumberFrom, bool AsPdf)
{
    /// <summary>The labels' pages, a label each; null where the label has no room for its numbers.</summary>
    /// <param name="label">The label.</param>
    /// <param name="batchCode">The batch code that is printed on it; null for none.</param>
    public IReadOnlyList<IReadOnlyList<Scene>>? Of(MadePaper label, string? batchCode)
    {
        if (NumberFrom is not { } first)
        {
            return [.. Enumerable.Repeat(label.Document.Pages, Copies)];
        }

        return RunningNumbers.On(label, batchCode, first + Copies - 1) is { } numbers
            ? [.. Enumerable.Range(first, Copies).Select(numbers.With)]
            : null;
    }
}
