namespace Chandlery.Workbench.Answers;

/// <summary>That a file lies beside a declaration now.</summary>
/// <param name="Name">Its name there.</param>
internal sealed record AttachedAnswer(string Name);
