namespace Chandlery.Core.Declared;

/// <summary>What harm was done.</summary>
public enum Harm
{
    /// <summary>None.</summary>
    Nothing,

    /// <summary>To things.</summary>
    Damage,

    /// <summary>To somebody's health.</summary>
    Injury,

    /// <summary>Somebody died.</summary>
    Death,

    /// <summary>Nobody knows.</summary>
    Unknown,
}
