namespace Chandlery.Workbench.Answers;

/// <summary>What changes.</summary>
/// <param name="Changes">The candles that change.</param>
internal sealed record ChangesAnswer(IReadOnlyList<ChangedCandle> Changes);
