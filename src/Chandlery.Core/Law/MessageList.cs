namespace Chandlery.Core.Law;

/// <summary>A place where messages on safe use stand: a part of a card, the label, a listing.</summary>
public enum MessageList
{
    /// <summary>The signs of the label.</summary>
    Label,

    /// <summary>The messages that save lives, which cards set largest.</summary>
    First,

    /// <summary>What to do before use.</summary>
    Before,

    /// <summary>What to do in use.</summary>
    During,

    /// <summary>What to do after use.</summary>
    After,

    /// <summary>What to do when something happens.</summary>
    Trouble,

    /// <summary>What a card for the pocket has room for.</summary>
    Pocket,

    /// <summary>What a shop tells its customers.</summary>
    Shop,
}
