namespace Chandlery.Core.Law;

/// <summary>Keys of the words that papers call a product by.</summary>
/// <param name="Scented">With fragrance, for the house.</param>
/// <param name="Outdoors">With fragrance, for outdoors.</param>
/// <param name="Plain">Without fragrance.</param>
public sealed record KindNames(string Scented, string Outdoors, string Plain);
