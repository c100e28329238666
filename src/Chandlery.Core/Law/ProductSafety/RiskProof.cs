namespace Chandlery.Core.Law.ProductSafety;

/// <summary>What proves that a risk is met.</summary>
public enum RiskProof
{
    /// <summary>Flame heights of the burn tests.</summary>
    Flame,

    /// <summary>The slope of the burn tests.</summary>
    Slope,

    /// <summary>Vessels whole at the end of the burn tests.</summary>
    Vessel,

    /// <summary>Temperatures of the vessel in the burn tests.</summary>
    Heat,

    /// <summary>Soot in the burn tests.</summary>
    Soot,

    /// <summary>Relighting in the burn tests.</summary>
    Relit,

    /// <summary>The end of the burn tests.</summary>
    End,

    /// <summary>The burn-safety card.</summary>
    Card,

    /// <summary>Classification and label.</summary>
    Label,

    /// <summary>Answers to the questions on form and claims.</summary>
    Answers,
}
