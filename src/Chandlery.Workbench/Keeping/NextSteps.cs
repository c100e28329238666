namespace Chandlery.Workbench.Keeping;

/// <summary>What can be taken back and done again.</summary>
/// <param name="Undo">The change that would be taken back next; null for none.</param>
/// <param name="Redo">The change that would be done again next; null for none.</param>
internal sealed record NextSteps(KeptChange? Undo, KeptChange? Redo);
