namespace Chandlery.Core.Law;

/// <summary>What may hold of a candle and decides which sentences its safety data sheet has.</summary>
public enum SheetCondition
{
    /// <summary>It is burned indoors.</summary>
    Indoor,

    /// <summary>It is burned outdoors.</summary>
    Outdoor,

    /// <summary>It has a class.</summary>
    Classified,

    /// <summary>It has no class.</summary>
    NotClassified,

    /// <summary>It holds sensitisers that must be named.</summary>
    NamesSensitisers,

    /// <summary>More of it is undeclared than a rounding of the suppliers' sheets.</summary>
    HasUndeclared,

    /// <summary>An ingredient of unknown acute toxicity reaches the share from which the law wants that said.</summary>
    HasUnknownToxicity,

    /// <summary>An ingredient of unknown hazard to waters reaches the share from which the law wants that said.</summary>
    HasUnknownAquatic,

    /// <summary>The place's label shows hazards.</summary>
    LabelShowsHazards,

    /// <summary>The place's label shows no hazards.</summary>
    LabelShowsNoHazards,

    /// <summary>The label has something to show.</summary>
    HasLabelElements,

    /// <summary>The place's label shows hazards, and the candle has none to show.</summary>
    HasNoLabelElements,

    /// <summary>A substance of concern (PBT, vPvB, endocrine disruptor) reaches its share.</summary>
    HasConcerning,

    /// <summary>None does.</summary>
    HasNoConcerning,

    /// <summary>A substance is PBT or vPvB, at whatever share.</summary>
    HasPersistent,

    /// <summary>An endocrine disruptor for health reaches its share.</summary>
    HasEndocrineForHealth,

    /// <summary>An endocrine disruptor for the environment reaches its share.</summary>
    HasEndocrineForEnvironment,

    /// <summary>Section 3 names a substance.</summary>
    NamesSubstances,

    /// <summary>Section 3 names none.</summary>
    NamesNoSubstance,

    /// <summary>The maker declares an emergency telephone number.</summary>
    HasEmergencyTelephone,

    /// <summary>The maker declares an e-mail address.</summary>
    HasEmail,

    /// <summary>The maker declares a web address.</summary>
    HasWeb,

    /// <summary>It carries a UFI.</summary>
    HasUfi,

    /// <summary>A dye is declared.</summary>
    Dyed,

    /// <summary>All waxes melt at one declared temperature.</summary>
    MeltsAtOneTemperature,

    /// <summary>The waxes melt at several declared temperatures.</summary>
    MeltsOverARange,

    /// <summary>All waxes have one declared density.</summary>
    HasOneDensity,

    /// <summary>The waxes have several declared densities.</summary>
    HasSeveralDensities,

    /// <summary>It holds fragrance oils.</summary>
    HasOils,

    /// <summary>It has a class for health.</summary>
    HasHealthClass,

    /// <summary>A class for health was computed and is not met.</summary>
    HasHealthNotMet,

    /// <summary>The law has classes for health that are not computed.</summary>
    HasHealthNotComputed,

    /// <summary>An ingredient has an acute toxicity estimate.</summary>
    HasEstimates,

    /// <summary>The law has classes for the environment.</summary>
    EnvironmentCovered,

    /// <summary>The law has no classes for the environment.</summary>
    EnvironmentNotCovered,

    /// <summary>It has a class for the environment.</summary>
    HasEnvironmentClass,

    /// <summary>A class for the environment was computed and is not met.</summary>
    HasEnvironmentNotMet,

    /// <summary>It is dangerous goods.</summary>
    DangerousGoods,

    /// <summary>It is dangerous goods in a package that is small enough to be free.</summary>
    DangerousGoodsInSmallPackage,

    /// <summary>It is dangerous goods in a package that is too large to be free.</summary>
    DangerousGoodsInLargePackage,

    /// <summary>It is dangerous goods, and its proper shipping name carries the names of substances.</summary>
    NamedForTransport,

    /// <summary>It is dangerous to waters, whatever its entry in the list of dangerous goods.</summary>
    DangerousToWaters,

    /// <summary>It may travel as a limited quantity.</summary>
    LimitedQuantity,

    /// <summary>It burns with a flame of its own.</summary>
    Burns,

    /// <summary>It is wax without a wick, for a warmer.</summary>
    Warmed,

    /// <summary>It is a liquid.</summary>
    Liquid,

    /// <summary>A flash point of the liquid was measured.</summary>
    HasFlashPoint,

    /// <summary>A boiling point of the liquid was measured.</summary>
    HasBoilingPoint,

    /// <summary>A viscosity of the liquid was measured.</summary>
    HasViscosity,

    /// <summary>A density of the liquid was measured.</summary>
    HasLiquidDensity,

    /// <summary>Sections 2 and 3 name hazard statements.</summary>
    HasStatements,

    /// <summary>Something could not be assessed.</summary>
    HasUnassessed,
}
