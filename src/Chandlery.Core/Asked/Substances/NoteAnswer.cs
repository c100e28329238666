namespace Chandlery.Core.Asked.Substances;

/// <summary>A note of an entry.</summary>
/// <param name="Note">Its letter or figure.</param>
/// <param name="Means">What it means for a mixture; empty where it means nothing for a candle.</param>
public sealed record NoteAnswer(string Note, string Means);
