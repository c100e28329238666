namespace Chandlery.Intake.Drafts;

/// <summary>What the head of any document says.</summary>
/// <param name="Name">Product name.</param>
/// <param name="Supplier">Supplier.</param>
/// <param name="Document">Number of the document.</param>
/// <param name="Version">Version.</param>
/// <param name="Revised">Revision date.</param>
internal sealed record SheetHead(
    Found<string>? Name,
    Found<string>? Supplier,
    Found<string>? Document,
    Found<string>? Version,
    Found<DateOnly>? Revised
);
