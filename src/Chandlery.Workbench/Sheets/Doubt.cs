namespace Chandlery.Workbench.Sheets;

/// <summary>Something of a draft that somebody must look at.</summary>
/// <param name="Line">Line of the declaration's text on which it is marked, from 1.</param>
/// <param name="What">What and why.</param>
/// <param name="Field">The value that it speaks of; null where it speaks of the draft, or of something that is missing.</param>
/// <param name="Needs">Name of the field that is missing; null where nothing is.</param>
internal sealed record Doubt(int Line, string What, string? Field, string? Needs);
