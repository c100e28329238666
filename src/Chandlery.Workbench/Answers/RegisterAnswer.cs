namespace Chandlery.Workbench.Answers;

/// <summary>What the register holds.</summary>
/// <param name="Entries">The entries asked for.</param>
/// <param name="Wrong">What was changed in it afterwards, or why it cannot be read.</param>
internal sealed record RegisterAnswer(IReadOnlyList<RegisterLine> Entries, IReadOnlyList<string> Wrong);
