namespace Chandlery.Core.Declared;

/// <summary>How much soot was seen, by eye.</summary>
public enum SootSeen
{
    /// <summary>None.</summary>
    Nothing,

    /// <summary>A trace on flame or rim.</summary>
    Little,

    /// <summary>Smoke or a dark rim.</summary>
    Much,
}
