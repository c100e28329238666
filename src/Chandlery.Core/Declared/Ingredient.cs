using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>One line of a supplier's ingredient table.</summary>
/// <param name="Identity">Which substance.</param>
/// <param name="Share">Its share of the product that the table is about.</param>
/// <param name="Claims">Hazard classes as declared; null when the sheet says nothing (unknown), empty when it says "not classified".</param>
/// <param name="SpecificLimits">Specific concentration limits as declared.</param>
/// <param name="AcuteM">M-factor for Aquatic Acute 1, when declared.</param>
/// <param name="ChronicM">M-factor for Aquatic Chronic 1, when declared.</param>
/// <param name="Toxicity">Acute toxicity estimates, when declared.</param>
/// <param name="Constituents">What a natural complex substance is itself made of; shares are of this ingredient.</param>
/// <param name="ListedSeparately">For a constituent: the same table also has it as a line of its own, which already counts this amount.</param>
/// <param name="Place">Where it was declared.</param>
public sealed record Ingredient(
    SubstanceIdentity Identity,
    DeclaredRange Share,
    IReadOnlyList<HazardClaim>? Claims,
    IReadOnlyList<SpecificLimit> SpecificLimits,
    double? AcuteM,
    double? ChronicM,
    IReadOnlyList<ToxicityEstimate> Toxicity,
    IReadOnlyList<Ingredient> Constituents,
    bool ListedSeparately,
    TextPlace Place
);
