namespace Chandlery.Core.Law;

/// <summary>What the package itself may have to bear where the label stands on a tag or on an outer package.</summary>
public enum InnerElement
{
    /// <summary>Pictograms.</summary>
    Pictograms,

    /// <summary>The signal word.</summary>
    SignalWord,

    /// <summary>The product's name.</summary>
    ProductName,

    /// <summary>Name and telephone number of the supplier.</summary>
    Supplier,
}
