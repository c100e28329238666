namespace Chandlery.Core.Hazards;

/// <summary>Which M-factor of a substance is meant.</summary>
public enum MFactorKind
{
    /// <summary>None.</summary>
    None,

    /// <summary>The one for acute aquatic toxicity.</summary>
    Acute,

    /// <summary>The one for chronic aquatic toxicity.</summary>
    Chronic,
}
