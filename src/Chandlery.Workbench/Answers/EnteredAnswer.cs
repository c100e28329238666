namespace Chandlery.Workbench.Answers;

/// <summary>That a label was entered in the register.</summary>
/// <param name="Number">Number of the entry.</param>
/// <param name="Hash">Hash of the entry.</param>
internal sealed record EnteredAnswer(long Number, string Hash);
