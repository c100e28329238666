namespace Chandlery.Core.Law;

/// <summary>What must hold of a product before a message is said of it.</summary>
public enum MessageWhen
{
    /// <summary>It has one wick.</summary>
    OneWick,

    /// <summary>It has several wicks.</summary>
    SeveralWicks,

    /// <summary>It is used in the house.</summary>
    Indoor,

    /// <summary>It is used out of doors.</summary>
    Outdoor,
}
