using Chandlery.Workbench.Keeping;

namespace Chandlery.Workbench.Answers;

/// <summary>What a file was, and what was put away.</summary>
/// <param name="Texts">What the asked file was at each time, the latest first.</param>
/// <param name="PutAway">Files that were put away.</param>
internal sealed record HistoryAnswer(IReadOnlyList<KeptText> Texts, IReadOnlyList<PutAwayFile> PutAway);
