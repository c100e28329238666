namespace Chandlery.Core.Law.ProductSafety;

/// <summary>Somebody whom the law wants named beside the maker.</summary>
public enum MarketRole
{
    /// <summary>Who brings the product on the market from outside.</summary>
    Importer,

    /// <summary>Who answers for it where the maker is not established.</summary>
    ResponsiblePerson,
}
