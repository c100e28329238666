namespace Chandlery.Core.Law;

/// <summary>What a package for the public may have to have beside its label.</summary>
public enum PackagingFeature
{
    /// <summary>A fastening that children cannot open.</summary>
    ChildResistant,

    /// <summary>A warning of danger that can be felt.</summary>
    TactileWarning,
}
