namespace Chandlery.Workbench.Keeping;

/// <summary>What a change did to a file.</summary>
/// <param name="File">Path below the maker's folder, with slashes.</param>
/// <param name="Before">SHA-256 of the text before; null when there was no file.</param>
/// <param name="After">SHA-256 of the text after; null when the file went.</param>
internal sealed record FileChange(string File, string? Before, string? After);
