namespace Chandlery.Core.Law.ProductSafety;

/// <summary>What shows that a duty is done.</summary>
public enum Artefact
{
    /// <summary>Nothing that the program holds: a person does it.</summary>
    Nothing,

    /// <summary>The assessment, with nothing that stops the sale.</summary>
    Assessment,

    /// <summary>A batch code on the label.</summary>
    BatchCode,

    /// <summary>Names and addresses of maker and others.</summary>
    Roles,

    /// <summary>The burn-safety card.</summary>
    Card,

    /// <summary>The technical file.</summary>
    TechnicalFile,

    /// <summary>Burn tests of this candle as it is.</summary>
    Tests,

    /// <summary>Lots named by every batch.</summary>
    Lots,

    /// <summary>Dispatches of every batch.</summary>
    Dispatches,

    /// <summary>The register of complaints, with every clock kept.</summary>
    Incidents,

    /// <summary>Texts for the shop.</summary>
    Listing,

    /// <summary>Texts for advertisements.</summary>
    Advert,

    /// <summary>Weighings of every batch, where the e-mark is used.</summary>
    Weighings,

    /// <summary>What it is packed in.</summary>
    Packaging,

    /// <summary>Answers to the questions on form and claims.</summary>
    Answers,

    /// <summary>The answer to whether a wick has a core of metal, the only place of lead in it.</summary>
    Wick,

    /// <summary>The page on internal processes for product safety.</summary>
    Procedure,

    /// <summary>A UFI, where one is needed.</summary>
    Ufi,
}
