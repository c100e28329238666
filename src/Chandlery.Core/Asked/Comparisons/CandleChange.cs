namespace Chandlery.Core.Asked.Comparisons;

/// <summary>What changes on one candle.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Edition">Edition of the law.</param>
/// <param name="Changes">What begins and ends; empty when it is only in one of the states.</param>
/// <param name="Remark">That it is new, gone, or could not be assessed in one state; empty otherwise.</param>
public sealed record CandleChange(string Id, string Edition, IReadOnlyList<StateChange> Changes, string Remark);
