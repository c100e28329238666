using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>One line of a supplier's ingredient table.</summary>
public sealed record Ingredient
{
    /// <summary>Which substance.</summary>
    public required SubstanceIdentity Identity { get; init; }

    /// <summary>Its share of the product that the table is about.</summary>
    public required DeclaredRange Share { get; init; }

    /// <summary>Hazard classes as declared; null when the sheet says nothing (unknown), empty when it says "not classified".</summary>
    public required IReadOnlyList<HazardClaim>? Claims { get; init; }

    /// <summary>Specific concentration limits as declared.</summary>
    public required IReadOnlyList<SpecificLimit> SpecificLimits { get; init; }

    /// <summary>M-factor for Aquatic Acute 1, when declared.</summary>
    public required double? AcuteM { get; init; }

    /// <summary>M-factor for Aquatic Chronic 1, when declared.</summary>
    public required double? ChronicM { get; init; }

    /// <summary>Acute toxicity estimates, when declared.</summary>
    public required IReadOnlyList<ToxicityEstimate> Toxicity { get; init; }

    /// <summary>What a natural complex substance is itself made of; shares are of this ingredient.</summary>
    public required IReadOnlyList<Ingredient> Constituents { get; init; }

    /// <summary>For a constituent: the same table also has it as a line of its own, which already counts this amount.</summary>
    public required bool ListedSeparately { get; init; }

    /// <summary>
    /// Notes of its entry in the table of harmonised classes whose condition the supplier's document shows to hold, such as
    /// <c>N</c>.
    /// </summary>
    public IReadOnlyList<string> NotesMet { get; init; } = [];

    /// <summary>Where it was declared.</summary>
    public required TextPlace Place { get; init; }
}
