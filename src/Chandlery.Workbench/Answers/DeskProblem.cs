namespace Chandlery.Workbench.Answers;

/// <summary>Something wrong with the declaration on the desk.</summary>
/// <param name="Text">What is wrong and what to write instead; with its place in the file when no field of the form is to blame.</param>
/// <param name="Field">Names and positions, joined by dots, that lead to the field that it belongs beside; null for none.</param>
internal sealed record DeskProblem(string Text, string? Field);
