namespace Chandlery.Core.Law;

/// <summary>Where a computed part of the safety data sheet stands.</summary>
/// <param name="Subsection">Where it stands.</param>
/// <param name="Part">What is computed.</param>
/// <param name="When">Conditions of which one must hold; empty for always.</param>
/// <param name="Unless">Conditions of which none may hold.</param>
public sealed record SheetPartRow(string Subsection, SheetPart Part, SheetConditions When, SheetConditions Unless)
    : SheetRow(Subsection, When, Unless);
