namespace Chandlery.Core.Law.ProductSafety;

/// <summary>A part of a recall notice, in the order of print.</summary>
public enum NoticePart
{
    /// <summary>The headline.</summary>
    Headline,

    /// <summary>Which product, with a picture.</summary>
    Product,

    /// <summary>Its numbers and where they stand.</summary>
    Identification,

    /// <summary>When, where and by whom it was sold.</summary>
    Sold,

    /// <summary>The hazard.</summary>
    Danger,

    /// <summary>What to do.</summary>
    Action,

    /// <summary>What the buyer gets.</summary>
    Remedy,

    /// <summary>Whom to ask, free of charge.</summary>
    Contact,

    /// <summary>That others should be told.</summary>
    Share,
}
