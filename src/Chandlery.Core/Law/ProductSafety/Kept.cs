namespace Chandlery.Core.Law.ProductSafety;

/// <summary>What is kept for some years.</summary>
public enum Kept
{
    /// <summary>The technical file of a product.</summary>
    TechnicalFile,

    /// <summary>Who supplied what, and which business got it.</summary>
    SupplyChain,

    /// <summary>Names of persons who bought.</summary>
    Buyers,

    /// <summary>Names of persons in the register of complaints.</summary>
    Complainants,
}
