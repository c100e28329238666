using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>A mass.</summary>
/// <param name="Weight">Grams.</param>
public sealed record WeighedAmount(Grams Weight) : Amount;
