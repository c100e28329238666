namespace Chandlery.Workbench.Answers;

/// <summary>That a declaration was kept.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Hash">Hash of the text now on disk.</param>
/// <param name="Undo">What would be taken back next; null for nothing.</param>
/// <param name="Redo">What would be done again next; null for nothing.</param>
internal sealed record KeptAnswer(string Id, string Hash, string? Undo, string? Redo);
