namespace Chandlery.Tests.SecondCalculation;

/// <summary>The program's answer, in the words of the second calculation.</summary>
/// <param name="Classes">Codes of the classes, in the order of the alphabet.</param>
/// <param name="Label">Label elements.</param>
/// <param name="Named">Names on the label.</param>
/// <param name="UnknownPercent">Share of unknown acute toxicity that the label states, percent; null for none.</param>
/// <param name="UnknownWatersPercent">Share of unknown hazard to waters that the label states, percent; null for none.</param>
/// <param name="FlammabilityUnknown">True when nobody can say in which category of flammable liquids it is, if in any.</param>
internal sealed record ComparedAnswer(
    IReadOnlyList<string> Classes,
    SecondLabel Label,
    IReadOnlyList<string> Named,
    double? UnknownPercent,
    double? UnknownWatersPercent,
    bool FlammabilityUnknown
);
