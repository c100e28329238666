namespace Chandlery.Core.Assessed;

/// <summary>A product of an assessed set.</summary>
/// <param name="Count">How many of it.</param>
/// <param name="Product">What it is under the set's law.</param>
public sealed record SetLine(int Count, Assessment Product)
{
    /// <summary>Whether its label has something of the law on hazardous mixtures to show.</summary>
    public bool HasHazardLabel => Product.Label.All.Any();
}
