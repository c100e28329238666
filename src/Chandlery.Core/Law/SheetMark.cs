namespace Chandlery.Core.Law;

/// <summary>What a sentence of the safety data sheet may leave open, in braces: <c>{undeclared}</c>.</summary>
public enum SheetMark
{
    /// <summary>The row's own clause.</summary>
    Clause,

    /// <summary>Trade name.</summary>
    Product,

    /// <summary>Name of the declaration.</summary>
    Code,

    /// <summary>UFI.</summary>
    Ufi,

    /// <summary>Where it stands that a UFI is needed.</summary>
    UfiClause,

    /// <summary>The maker's name.</summary>
    SupplierName,

    /// <summary>The maker's address.</summary>
    SupplierAddress,

    /// <summary>The maker's telephone.</summary>
    SupplierTelephone,

    /// <summary>The maker's e-mail address.</summary>
    SupplierEmail,

    /// <summary>The maker's web address.</summary>
    SupplierWeb,

    /// <summary>Emergency telephone.</summary>
    EmergencyTelephone,

    /// <summary>The law's name.</summary>
    Edition,

    /// <summary>The day that decides which rules hold.</summary>
    AsOf,

    /// <summary>When the law's sources were looked up.</summary>
    LookedUp,

    /// <summary>Name of the sheet's format.</summary>
    Format,

    /// <summary>Where the format stands.</summary>
    FormatClause,

    /// <summary>Greatest undeclared share.</summary>
    Undeclared,

    /// <summary>The share from which substances of concern are told.</summary>
    ConcerningFrom,

    /// <summary>Those substances with shares and classes.</summary>
    Concerning,

    /// <summary>PBT and vPvB substances with their shares.</summary>
    Persistent,

    /// <summary>Endocrine disruptors for health with their shares.</summary>
    EndocrineForHealth,

    /// <summary>Endocrine disruptors for the environment with their shares.</summary>
    EndocrineForEnvironment,

    /// <summary>Where it stands which substances section 3 names.</summary>
    NamedFromClause,

    /// <summary>Names of the dyes.</summary>
    Dyes,

    /// <summary>Lowest melting point of a wax.</summary>
    MeltingLow,

    /// <summary>Highest melting point of a wax.</summary>
    MeltingHigh,

    /// <summary>Lowest density of a wax.</summary>
    DensityLow,

    /// <summary>Highest density of a wax.</summary>
    DensityHigh,

    /// <summary>The oils with their flash points.</summary>
    FlashPoints,

    /// <summary>Net mass.</summary>
    NetMass,

    /// <summary>UN number.</summary>
    UnNumber,

    /// <summary>Proper shipping name.</summary>
    UnName,

    /// <summary>Transport hazard class.</summary>
    UnClass,

    /// <summary>Packing group.</summary>
    PackingGroup,

    /// <summary>Where the transport rules stand.</summary>
    TransportClause,

    /// <summary>Classes that make the candle dangerous goods.</summary>
    TransportClasses,

    /// <summary>Substances that the proper shipping name carries.</summary>
    TransportNames,

    /// <summary>Net volume of a liquid.</summary>
    NetVolume,

    /// <summary>Packages of liquids up to this volume are free.</summary>
    SmallUpToLitres,

    /// <summary>The most that an inner package of a limited quantity holds.</summary>
    LimitedUpTo,

    /// <summary>The most that a package of limited quantities weighs, gross.</summary>
    LimitedGross,

    /// <summary>Where limited quantities stand.</summary>
    LimitedClause,

    /// <summary>Measured flash point of a liquid with its method.</summary>
    FlashPoint,

    /// <summary>Measured initial boiling point of a liquid.</summary>
    BoilingPoint,

    /// <summary>Measured kinematic viscosity of a liquid.</summary>
    Viscosity,

    /// <summary>Measured density of a liquid.</summary>
    LiquidDensity,

    /// <summary>Packages up to this mass are free.</summary>
    SmallUpTo,

    /// <summary>Where that stands.</summary>
    SmallClause,
}
