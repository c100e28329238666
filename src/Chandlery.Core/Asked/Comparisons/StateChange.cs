namespace Chandlery.Core.Asked.Comparisons;

/// <summary>Something that begins or ends on a candle between two states.</summary>
/// <param name="Subject">What it is about, such as "class".</param>
/// <param name="Begins">True when it is only in the later state.</param>
/// <param name="Text">The fact.</param>
/// <param name="Why">Why it holds in the state that has it.</param>
public sealed record StateChange(string Subject, bool Begins, string Text, string Why);
