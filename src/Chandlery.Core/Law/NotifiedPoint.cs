namespace Chandlery.Core.Law;

/// <summary>What a notification to the poison centres says besides the ingredients.</summary>
public enum NotifiedPoint
{
    /// <summary>Who notifies, with an electronic address.</summary>
    Submitter,

    /// <summary>In which languages.</summary>
    Languages,

    /// <summary>The product's category.</summary>
    Category,

    /// <summary>Kinds and sizes of packages, colour, state, use.</summary>
    Packages,

    /// <summary>The pH, or why there is none.</summary>
    Ph,

    /// <summary>What is known of its effects on health.</summary>
    Toxicology,

    /// <summary>Bought mixtures whose composition is not known in full.</summary>
    MixtureInMixture,
}
