namespace Chandlery.Intake.Pages;

/// <summary>A word with its place.</summary>
/// <param name="Text">Its letters, with ligatures and odd hyphens made plain.</param>
/// <param name="Box">Where it stands: from the baseline up by its type size's ascent.</param>
/// <param name="TypeSize">Type size, millimetres.</param>
public sealed record Word(string Text, Box Box, double TypeSize);
