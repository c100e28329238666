namespace Chandlery.Core.Asked.Substances;

/// <summary>What an entry said or will say.</summary>
/// <param name="Act">The act, or the draft.</param>
/// <param name="AppliesFrom">The day; null for a draft.</param>
/// <param name="Index">Index number; empty for a draft.</param>
/// <param name="Classes">The classes; none where it is no entry of this substance.</param>
/// <param name="Limits">Limits, factors and estimates as the table prints them.</param>
/// <param name="Says">What is said of a draft, of law that is not taken over, of an entry that does not cover the substance; empty otherwise.</param>
public sealed record VersionAnswer(
    string Act,
    DateOnly? AppliesFrom,
    string Index,
    IReadOnlyList<string> Classes,
    IReadOnlyList<string> Limits,
    string Says
);
