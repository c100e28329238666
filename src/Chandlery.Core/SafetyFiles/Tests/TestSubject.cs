namespace Chandlery.Core.SafetyFiles.Tests;

/// <summary>What a burn test looks at.</summary>
public enum TestSubject
{
    /// <summary>Height of the flame.</summary>
    Flame,

    /// <summary>Temperature of the vessel.</summary>
    Heat,

    /// <summary>Soot.</summary>
    Soot,

    /// <summary>Falling on a slope.</summary>
    Slope,

    /// <summary>Whether the vessel stayed whole.</summary>
    Vessel,

    /// <summary>Lighting again by itself.</summary>
    Relit,

    /// <summary>Going out by itself at the end.</summary>
    End,
}
