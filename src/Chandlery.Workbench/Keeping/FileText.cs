namespace Chandlery.Workbench.Keeping;

/// <summary>A file's text before and after a change.</summary>
/// <param name="File">Path below the maker's folder, with slashes.</param>
/// <param name="Before">The text before; null when there was no file.</param>
/// <param name="After">The text after; null to take the file away.</param>
internal sealed record FileText(string File, string? Before, string? After);
