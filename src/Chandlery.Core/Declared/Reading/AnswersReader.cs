using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads the answers to questions that have consequences in law.</summary>
internal static class AnswersReader
{
    public static SafetyAnswers Read(Fields fields)
    {
        if (fields.OptionalGroup(AnswersShape.Answers) is not { } group)
        {
            return SafetyAnswers.None;
        }

        var answers = new SafetyAnswers(
            group.OptionalFlag(AnswersShape.LooksLikeFood),
            group.OptionalFlag(AnswersShape.ForChildren),
            group.OptionalFlag(AnswersShape.Glitter),
            group.OptionalFlag(AnswersShape.MetalCoreWick),
            group.Has(AnswersShape.Claims) ? group.Texts(AnswersShape.Claims) : null
        );
        group.Done();
        return answers;
    }
}
