namespace Chandlery.Tests.SecondCalculation;

/// <summary>The program's answer, in the words of the second calculation.</summary>
/// <param name="Classes">Codes of the classes, in the order of the alphabet.</param>
/// <param name="Label">Label elements.</param>
/// <param name="Named">Names on the label.</param>
internal sealed record ComparedAnswer(IReadOnlyList<string> Classes, SecondLabel Label, IReadOnlyList<string> Named);
