namespace Chandlery.Core.Declared;

/// <summary>A business or person with a role on the market, as papers name it.</summary>
/// <param name="Name">Name.</param>
/// <param name="AddressLines">Postal address, a line each.</param>
/// <param name="Country">Country code of the place where it is established; <c>NI</c> for Northern Ireland; null when not declared.</param>
/// <param name="Telephone">Telephone number; null when not declared.</param>
/// <param name="Electronic">Electronic address: mail, or a page where there is none; null when not declared.</param>
public sealed record Party(string Name, IReadOnlyList<string> AddressLines, string? Country, string? Telephone, string? Electronic)
{
    /// <summary>Name, postal address, telephone and electronic address on one line.</summary>
    public string OnOneLine => string.Join(", ", [Name, .. AddressLines, .. new[] { Telephone, Electronic }.OfType<string>()]);
}
