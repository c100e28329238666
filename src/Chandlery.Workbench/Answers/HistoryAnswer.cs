using Chandlery.Workbench.Keeping;

namespace Chandlery.Workbench.Answers;

/// <summary>What the page changed so far.</summary>
/// <param name="Undo">What would be taken back next; null for nothing.</param>
/// <param name="Redo">What would be done again next; null for nothing.</param>
/// <param name="Texts">What the asked file was at each time, the latest first.</param>
/// <param name="PutAway">Files that were put away.</param>
internal sealed record HistoryAnswer(string? Undo, string? Redo, IReadOnlyList<KeptText> Texts, IReadOnlyList<PutAwayFile> PutAway);
