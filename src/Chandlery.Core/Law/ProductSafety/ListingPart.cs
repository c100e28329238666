namespace Chandlery.Core.Law.ProductSafety;

/// <summary>What a listing shows, in the order in which it is shown.</summary>
public enum ListingPart
{
    /// <summary>Name and kind of the product.</summary>
    Product,

    /// <summary>A picture of it.</summary>
    Picture,

    /// <summary>What else it is told by.</summary>
    Identifier,

    /// <summary>How much is in it.</summary>
    Quantity,

    /// <summary>The maker's name, postal and electronic address.</summary>
    Maker,

    /// <summary>The same of who answers for it where the maker is not established.</summary>
    ResponsiblePerson,

    /// <summary>Pictograms, by name.</summary>
    Pictograms,

    /// <summary>The signal word.</summary>
    SignalWord,

    /// <summary>Which hazards there are: hazard and supplemental statements.</summary>
    HazardTypes,

    /// <summary>Hazard statements.</summary>
    HazardStatements,

    /// <summary>Supplemental statements.</summary>
    SupplementalStatements,

    /// <summary>Substances that the label names.</summary>
    NamedSubstances,

    /// <summary>Precautionary statements.</summary>
    Precautions,

    /// <summary>How to burn it safely.</summary>
    SafetyInformation,

    /// <summary>The law's sentence that sends the reader to the label.</summary>
    LabelNotice,
}
