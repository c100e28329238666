namespace Chandlery.Workbench.Keeping;

/// <summary>A file that was put away and can be brought back.</summary>
/// <param name="File">Path below the maker's folder, with slashes.</param>
/// <param name="Hash">SHA-256 of its last text.</param>
/// <param name="At">When it was put away, in UTC.</param>
internal sealed record PutAwayFile(string File, string Hash, DateTimeOffset At);
