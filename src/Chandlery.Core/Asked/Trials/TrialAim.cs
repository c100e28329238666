namespace Chandlery.Core.Asked.Trials;

/// <summary>What a blend shall keep to, beside the limits that its wax and oils declare, which it always keeps.</summary>
public enum TrialAim
{
    /// <summary>Nothing in it stops a sale.</summary>
    Sale,

    /// <summary>The candle has no hazard class.</summary>
    NoClass,

    /// <summary>The label has no sensitiser to name: neither EUH208 nor a class for it.</summary>
    NoSensitiser,

    /// <summary>Every oil has an IFRA certificate for the category, and oils keep to them alone and together.</summary>
    Ifra,
}
