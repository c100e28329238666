namespace Chandlery.Core.SafetyDataSheets;

/// <summary>A section.</summary>
/// <param name="Number">1 to 16.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Subsections">Its subsections.</param>
public sealed record SheetSection(int Number, string Title, IReadOnlyList<SheetSubsection> Subsections);
