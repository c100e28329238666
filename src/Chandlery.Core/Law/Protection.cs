namespace Chandlery.Core.Law;

/// <summary>What a person is to protect, where a precaution leaves it to the supplier to say so (P280).</summary>
[Flags]
public enum Protection
{
    /// <summary>Not said.</summary>
    None = 0,

    /// <summary>Hands: gloves.</summary>
    Hands = 1,

    /// <summary>Eyes and face.</summary>
    Eyes = 2,
}
