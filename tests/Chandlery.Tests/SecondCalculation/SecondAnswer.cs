namespace Chandlery.Tests.SecondCalculation;

/// <summary>What the second calculation says of a mixture.</summary>
/// <param name="Classes">Codes of the classes, in the order of the alphabet.</param>
/// <param name="Label">Label elements.</param>
/// <param name="Names">Names on the label.</param>
/// <param name="UnknownPercent">Share of unknown acute toxicity that label and sheet state, percent by mass; null when none is due.</param>
/// <param name="UnknownWatersPercent">Share of unknown hazard to waters that label and sheet state, percent by mass; null when none is due.</param>
/// <param name="FlammabilityUnknown">True when what is known of a liquid leaves its category of flammable liquids open.</param>
internal sealed record SecondAnswer(
    IReadOnlyList<string> Classes,
    SecondLabel Label,
    NamesOnLabel Names,
    double? UnknownPercent,
    double? UnknownWatersPercent,
    bool FlammabilityUnknown
);
