using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of the answers to questions that have consequences in law.</summary>
internal static class AnswersShape
{
    public static readonly FlagField LooksLikeFood = new(
        "looksLikeFood",
        "Does it look like food, drink or fruit, or is its vessel one for food, so that somebody might put it in the mouth?"
    );

    public static readonly FlagField ForChildren = new("forChildren", "Does its form, figure or name draw children, or is it a toy?");
    public static readonly FlagField Glitter = new("glitter", "Does it hold glitter, beads or confetti of plastic?");
    public static readonly FlagField MetalCoreWick = new("metalCoreWick", "Has a wick a core of metal?");

    public static readonly TextsField Claims = new(
        "claims",
        "What label, shop or advertisement claim of it, such as 'natural'; an empty list when nothing."
    );

    public static readonly GroupField Answers = new(
        "answers",
        "Answers to questions that have consequences in law; what is left out is shown as not answered.",
        new Shape(
            "answers",
            "Answers to questions that have consequences in law.",
            [LooksLikeFood, ForChildren, Glitter, MetalCoreWick, Claims]
        )
    );
}
