namespace Chandlery.Core.Declared;

/// <summary>A product of a gift set.</summary>
/// <param name="Product">Which.</param>
/// <param name="Count">How many of it.</param>
public sealed record SetPart(Reference Product, int Count);
