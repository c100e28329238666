namespace Chandlery.Tests.SecondCalculation;

/// <summary>A substance of a mixture as a supplier declares it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Percent">Its share of the mixture, percent by mass.</param>
/// <param name="Classes">
/// Its classes such as <c>Skin Sens. 1B, H317</c>; empty when not classified, null when its hazards are unknown.
/// </param>
/// <param name="Limits">Its specific concentration limits.</param>
/// <param name="AcuteM">M-factor of Aquatic Acute 1, null when none is given.</param>
/// <param name="ChronicM">M-factor of Aquatic Chronic 1, null when none is given.</param>
/// <param name="Estimates">Its acute toxicity estimates.</param>
internal sealed record GivenSubstance(
    string Name,
    double Percent,
    IReadOnlyList<string>? Classes,
    IReadOnlyList<GivenLimit> Limits,
    double? AcuteM,
    double? ChronicM,
    IReadOnlyList<GivenEstimate> Estimates
)
{
    /// <summary>Its classes as read; none where its hazards are unknown.</summary>
    public IReadOnlyList<HazardText> Hazards { get; } = [.. (Classes ?? []).Select(HazardText.Read)];

    /// <summary>Its specific limits as read.</summary>
    public IReadOnlyList<OwnLimit> OwnLimits { get; } = [.. Limits.Select(l => new OwnLimit(HazardText.Read(l.Category), l.FromPercent))];

    /// <summary>True when a class of this name is declared, in whatever category.</summary>
    public bool Is(string hazardClass) => Hazards.Any(h => h.Class == hazardClass);
}
