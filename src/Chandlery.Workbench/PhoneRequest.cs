namespace Chandlery.Workbench;

/// <summary>Whether a phone may reach the page.</summary>
/// <param name="Open">True to let one in, false to shut the door again.</param>
/// <param name="At">What of the page it shall show first, as the address bar has it behind '#'; null for the beginning.</param>
internal sealed record PhoneRequest(bool Open, string? At);
