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
)
{
    /// <summary>The file that became another one, where the change took one away and made one; null when it moved none.</summary>
    public string? From => Moves ? Files.First(f => f.After is null).File : null;

    /// <summary>The file that it became; null when it moved none.</summary>
    public string? To => Moves ? Files.First(f => f.Before is null).File : null;

    private bool Moves => Files.Any(f => f.Before is null) && Files.Any(f => f.After is null);
}
