namespace Chandlery.Core.Declared;

/// <summary>A question whose answer has consequences in law.</summary>
public enum SafetyQuestion
{
    /// <summary>Does it look or smell like food?</summary>
    LooksLikeFood,

    /// <summary>Does it draw children?</summary>
    ForChildren,

    /// <summary>Does it hold plastic glitter or beads?</summary>
    Glitter,

    /// <summary>Has a wick a core of metal?</summary>
    MetalCoreWick,
}
