namespace Chandlery.Workbench.Keeping;

/// <summary>A change that the page made, as the history keeps it.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="At">When, in UTC.</param>
/// <param name="What">What was done, in words.</param>
/// <param name="Files">What it did to which file.</param>
/// <param name="Undoes">Number of the change that this one takes back; null for none.</param>
/// <param name="Redoes">Number of the change that this one does again; null for none.</param>
internal sealed record KeptChange(
    int Number,
    DateTimeOffset At,
    string What,
    IReadOnlyList<FileChange> Files,
    int? Undoes = null,
    int? Redoes = null
);
