namespace Chandlery.Core.SafetyDataSheets;

/// <summary>A subsection; section 16 has one without a number of its own.</summary>
/// <param name="Number">Such as 2.1.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Blocks">Its contents; never empty.</param>
public sealed record SheetSubsection(string Number, string Title, IReadOnlyList<SheetBlock> Blocks);
