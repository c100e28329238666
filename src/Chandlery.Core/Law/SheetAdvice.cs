namespace Chandlery.Core.Law;

/// <summary>A text of the sheet that does not follow from a computation.</summary>
/// <param name="Subsection">Where it stands.</param>
/// <param name="Text">The text.</param>
/// <param name="When">Conditions of which one must hold; empty for always.</param>
/// <param name="Unless">Conditions of which none may hold.</param>
public sealed record SheetAdvice(string Subsection, string Text, IReadOnlyList<string> When, IReadOnlyList<string> Unless);
