namespace Chandlery.Core.Classified;

/// <summary>Where the printed name of a substance comes from.</summary>
public enum NameOrigin
{
    /// <summary>The table of harmonised classes, which has names of its own in each language.</summary>
    Table,

    /// <summary>The cosmetics law, whose names are the same in all languages.</summary>
    CosmeticsLaw,

    /// <summary>The trade or the supplier's sheet.</summary>
    Trade,
}
