namespace Chandlery.Core.Law;

/// <summary>A part of a product that its kind asks for, allows or does not know.</summary>
public enum KindPart
{
    /// <summary>What it is filled into.</summary>
    Vessel,

    /// <summary>The size of a body that stands by itself.</summary>
    Size,

    /// <summary>Its wax.</summary>
    Wax,

    /// <summary>The liquid that its oils are dissolved in.</summary>
    Base,

    /// <summary>Its wicks.</summary>
    Wicks,
}
