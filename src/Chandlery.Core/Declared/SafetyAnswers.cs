namespace Chandlery.Core.Declared;

/// <summary>What the maker answers to questions on the candle's form and claims; null where a question is not answered.</summary>
/// <param name="LooksLikeFood">Whether it looks or smells like food, so that somebody might eat it.</param>
/// <param name="ForChildren">Whether its form, name or use draws children.</param>
/// <param name="Glitter">Whether it holds plastic glitter or beads.</param>
/// <param name="MetalCoreWick">Whether a wick has a core of metal.</param>
/// <param name="Claims">What label, shop or advertisement claim of it.</param>
public sealed record SafetyAnswers(
    bool? LooksLikeFood,
    bool? ForChildren,
    bool? Glitter,
    bool? MetalCoreWick,
    IReadOnlyList<string>? Claims
)
{
    /// <summary>Nothing answered.</summary>
    public static SafetyAnswers None { get; } = new(null, null, null, null, null);

    /// <summary>The answer to a question; null when there is none.</summary>
    public bool? To(SafetyQuestion question) =>
        question switch
        {
            SafetyQuestion.LooksLikeFood => LooksLikeFood,
            SafetyQuestion.ForChildren => ForChildren,
            SafetyQuestion.Glitter => Glitter,
            _ => MetalCoreWick,
        };
}
