namespace Chandlery.Intake.Wording;

/// <summary>A share as read.</summary>
/// <param name="Text">In the form that declarations use.</param>
/// <param name="Doubts">What had to be converted or left away.</param>
internal sealed record ShareReading(string Text, IReadOnlyList<string> Doubts);
