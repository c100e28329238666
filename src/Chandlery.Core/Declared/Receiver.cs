namespace Chandlery.Core.Declared;

/// <summary>Who got candles, or told of one.</summary>
/// <param name="Name">Name.</param>
/// <param name="AddressLines">Postal address, a line each; empty when not known.</param>
/// <param name="Email">Electronic address; null when not known.</param>
/// <param name="Telephone">Telephone number; null when not known.</param>
public sealed record Receiver(string Name, IReadOnlyList<string> AddressLines, string? Email, string? Telephone);
