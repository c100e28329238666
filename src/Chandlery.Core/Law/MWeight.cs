namespace Chandlery.Core.Law;

/// <summary>Which M-factor multiplies a share.</summary>
public enum MWeight
{
    /// <summary>None.</summary>
    None,

    /// <summary>The one for acute aquatic toxicity.</summary>
    Acute,

    /// <summary>The one for chronic aquatic toxicity.</summary>
    Chronic,
}
