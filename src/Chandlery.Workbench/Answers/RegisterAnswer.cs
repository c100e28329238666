namespace Chandlery.Workbench.Answers;

/// <summary>What the register holds, a page of it.</summary>
/// <param name="Entries">The entries asked for, the latest first.</param>
/// <param name="Wrong">What was changed in it afterwards, or why it cannot be read.</param>
/// <param name="Head">Hash of the last entry, to be written down elsewhere; null where there is no register.</param>
/// <param name="HasMore">Whether there are older entries than are shown.</param>
internal sealed record RegisterAnswer(IReadOnlyList<RegisterLine> Entries, IReadOnlyList<string> Wrong, string? Head, bool HasMore)
{
    /// <summary>Number of the last entry.</summary>
    public long Count { get; init; }

    /// <summary>Whether all entries were checked for this answer, not only the latest.</summary>
    public bool IsChecked { get; init; }
}
