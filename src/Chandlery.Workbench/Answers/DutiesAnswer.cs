namespace Chandlery.Workbench.Answers;

/// <summary>What is due for a candle beside its hazard label.</summary>
/// <param name="Duties">The duties of all its places.</param>
/// <param name="Unknown">Names of places of which no duties are known: that does not mean that there are none.</param>
internal sealed record DutiesAnswer(IReadOnlyList<DutyOnDesk> Duties, IReadOnlyList<string> Unknown);
