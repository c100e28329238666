namespace Chandlery.Workbench.Answers;

/// <summary>Something wrong with the candle on the desk.</summary>
/// <param name="Text">What is wrong and what to write instead; with its place in the file when no field of the form is to blame.</param>
/// <param name="Field">The form's field that it belongs beside: its name, <c>oil:</c> with an oil's name, or <c>oils</c>; null for none.</param>
internal sealed record DeskProblem(string Text, string? Field);
