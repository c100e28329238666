using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>How a substance is told from others: by CAS number first, then EC number, then name.</summary>
/// <param name="Name">Name as the sheet prints it.</param>
/// <param name="Cas">CAS number, when given.</param>
/// <param name="Ec">EC number, when given.</param>
public sealed record SubstanceIdentity(string Name, CasNumber? Cas, EcNumber? Ec)
{
    /// <summary>The name's letters and figures in lower case, by which names are compared.</summary>
    public string PlainName { get; } = PlainText.Of(Name);
}

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

/// <summary>A hazard class and category that a supplier or a list gives a substance.</summary>
/// <param name="Category">The category.</param>
/// <param name="Statement">Its statement as given, such as <c>H361d</c>; the category's own when none was given.</param>
public sealed record HazardClaim(HazardCategory Category, string Statement);

/// <summary>A specific concentration limit: from <paramref name="From"/> on, a mixture gets <paramref name="Category"/>.</summary>
/// <param name="Category">The category that the mixture gets.</param>
/// <param name="From">Lower limit, percent by mass of the mixture.</param>
/// <param name="Below">Upper end of the range, when one is printed.</param>
public sealed record SpecificLimit(HazardCategory Category, MassPercent From, MassPercent? Below);

/// <summary>Ways that a substance may enter the body, with the units that its acute toxicity is given in.</summary>
public enum ExposureRoute
{
    /// <summary>By mouth, mg per kg body weight.</summary>
    Oral,

    /// <summary>Through the skin, mg per kg body weight.</summary>
    Dermal,

    /// <summary>Breathed as gas, ppm by volume.</summary>
    InhalationGas,

    /// <summary>Breathed as vapour, mg per litre over four hours.</summary>
    InhalationVapour,

    /// <summary>Breathed as dust or mist, mg per litre over four hours.</summary>
    InhalationDust,
}

/// <summary>An acute toxicity estimate (ATE), LD50 or LC50.</summary>
/// <param name="Route">The route, which fixes the unit.</param>
/// <param name="Value">The figure in the route's unit.</param>
public sealed record ToxicityEstimate(ExposureRoute Route, double Value);
