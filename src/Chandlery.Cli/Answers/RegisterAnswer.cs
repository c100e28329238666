namespace Chandlery.Cli.Answers;

/// <summary>Whether a register holds together, for programs.</summary>
/// <param name="Holds">True when no entry was changed or removed.</param>
/// <param name="Entries">How many entries there are.</param>
/// <param name="Head">Hash of the last entry; empty for none.</param>
/// <param name="Wrong">What is wrong, the first thousand.</param>
internal sealed record RegisterAnswer(bool Holds, long Entries, string Head, IReadOnlyList<string> Wrong);
