namespace Chandlery.Core.Asked.Substances;

/// <summary>Something that holds a substance.</summary>
/// <param name="Kind">oil, wax, extra or candle.</param>
/// <param name="Id">Its short name.</param>
/// <param name="Name">Its name.</param>
/// <param name="Percent">The share as declared, or the highest share of the finished candle.</param>
/// <param name="Differences">Where its sheet and the harmonised classes differ, and which counts; none for a candle, which follows its parts.</param>
public sealed record HolderAnswer(string Kind, string Id, string Name, string Percent, IReadOnlyList<string> Differences);
