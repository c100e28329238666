using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>Who makes the candle and answers for the label.</summary>
/// <param name="Id">File name without its ending.</param>
/// <param name="Place">Where it is declared.</param>
/// <param name="Name">Name on the label.</param>
/// <param name="AddressLines">Postal address, a line each.</param>
/// <param name="Telephone">Telephone number.</param>
/// <param name="Email">Electronic address; either this or <paramref name="Web"/> is given.</param>
/// <param name="Web">Web address.</param>
/// <param name="EmergencyTelephone">Emergency telephone number, where a place of sale asks for one.</param>
/// <param name="Vat">VAT number, for the UFI; null when not declared.</param>
public sealed record Maker(
    string Id,
    TextPlace Place,
    string Name,
    IReadOnlyList<string> AddressLines,
    string Telephone,
    string? Email,
    string? Web,
    string? EmergencyTelephone,
    VatNumber? Vat
) : IDeclaration;
