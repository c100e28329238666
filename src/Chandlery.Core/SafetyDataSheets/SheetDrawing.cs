namespace Chandlery.Core.SafetyDataSheets;

/// <summary>A drawing that is made apart from the document.</summary>
/// <param name="Name">By which name its maker has it.</param>
/// <param name="About">What it shows, in words.</param>
public sealed record SheetDrawing(string Name, string About) : SheetBlock;
