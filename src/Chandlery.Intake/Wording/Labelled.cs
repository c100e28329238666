using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Wording;

/// <summary>A value found beside or under its label.</summary>
/// <param name="Text">The value's text.</param>
/// <param name="Page">Page.</param>
/// <param name="Box">Where it stands.</param>
/// <param name="IsUnder">True when it stands in the line under its label, which is less certain.</param>
/// <param name="IsClose">
/// True when nothing but a blank parts it from its label, so that what looks like a label may begin a sentence, or when it runs over
/// several lines, of which the later ones may say something else.
/// </param>
internal sealed record Labelled(string Text, int Page, Box Box, bool IsUnder, bool IsClose = false);
