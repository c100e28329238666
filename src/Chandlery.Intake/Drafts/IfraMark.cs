using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Drafts;

/// <summary>Categories or a limit at a place of an IFRA certificate.</summary>
/// <param name="Categories">Categories; empty for a limit.</param>
/// <param name="Limit">The limit; null for categories.</param>
/// <param name="Frame">Where it stands.</param>
/// <param name="IsOpen">True for a list of categories that goes on in the next line.</param>
internal sealed record IfraMark(IReadOnlyList<string> Categories, string? Limit, Box Frame, bool IsOpen);
