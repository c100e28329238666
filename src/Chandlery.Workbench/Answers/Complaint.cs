namespace Chandlery.Workbench.Answers;

/// <summary>Why the page does not get what it asked for.</summary>
/// <param name="Problems">What is wrong, a sentence each.</param>
internal sealed record Complaint(IReadOnlyList<string> Problems);
