namespace Chandlery.Core.Declared;

/// <summary>How the poison centres can find out about a bought mixture whose composition the maker does not know in full.</summary>
/// <param name="Ufi">The UFI on its sheet; null when none is declared.</param>
/// <param name="Telephone">Its supplier's telephone number, or null.</param>
/// <param name="Email">Its supplier's electronic address, or null.</param>
public sealed record MixtureSource(string? Ufi, string? Telephone, string? Email)
{
    /// <summary>Nothing is declared.</summary>
    public static MixtureSource NotDeclared { get; } = new(null, null, null);
}
