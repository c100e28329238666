namespace Chandlery.Core.Law;

/// <summary>What a product is at room temperature, in the sense of the law on classification.</summary>
public enum PhysicalState
{
    /// <summary>It keeps its form; wax does.</summary>
    Solid,

    /// <summary>It runs; what stands in a diffuser or a spray does.</summary>
    Liquid,
}
