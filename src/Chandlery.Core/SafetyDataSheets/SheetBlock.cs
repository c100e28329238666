namespace Chandlery.Core.SafetyDataSheets;

/// <summary>A part of a subsection.</summary>
public abstract record SheetBlock;
