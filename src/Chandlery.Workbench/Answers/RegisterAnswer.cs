namespace Chandlery.Workbench.Answers;

/// <summary>What the register holds.</summary>
/// <param name="Entries">The entries asked for, the latest first.</param>
/// <param name="Wrong">What was changed in it afterwards, or why it cannot be read.</param>
/// <param name="Head">Hash of the last entry, to be written down elsewhere; null where there is no register.</param>
/// <param name="HasMore">Whether there are more entries than are shown.</param>
internal sealed record RegisterAnswer(IReadOnlyList<RegisterLine> Entries, IReadOnlyList<string> Wrong, string? Head, bool HasMore);
