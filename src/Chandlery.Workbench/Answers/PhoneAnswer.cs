namespace Chandlery.Workbench.Answers;

/// <summary>How a phone comes in.</summary>
/// <param name="Address">Address with a key that opens once; null when the door is shut.</param>
/// <param name="Code">The address as a QR code, SVG; null when the door is shut.</param>
internal sealed record PhoneAnswer(string? Address, string? Code);
