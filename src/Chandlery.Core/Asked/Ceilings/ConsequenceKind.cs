namespace Chandlery.Core.Asked.Ceilings;

/// <summary>What kind of thing begins or ends at a ceiling, from the lightest to the gravest.</summary>
public enum ConsequenceKind
{
    /// <summary>A supplemental statement.</summary>
    Statement,

    /// <summary>A hazard class.</summary>
    HazardClass,

    /// <summary>A signal word.</summary>
    SignalWord,

    /// <summary>A declared limit is broken.</summary>
    BrokenLimit,
}
