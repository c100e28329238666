namespace Chandlery.Core.SafetyDataSheets;

/// <summary>A paragraph.</summary>
/// <param name="Text">The text.</param>
/// <param name="Strong">Set in bold.</param>
public sealed record SheetText(string Text, bool Strong = false) : SheetBlock;
