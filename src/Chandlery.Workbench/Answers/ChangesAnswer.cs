using Chandlery.Core.Asked.Comparisons;

namespace Chandlery.Workbench.Answers;

/// <summary>What changes between two days.</summary>
/// <param name="Changes">The candles that change.</param>
internal sealed record ChangesAnswer(IReadOnlyList<CandleChange> Changes);
