using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>Who makes the candle and answers for the label.</summary>
public sealed record Maker : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>Name on the label.</summary>
    public required string Name { get; init; }

    /// <summary>Postal address, a line each.</summary>
    public required IReadOnlyList<string> AddressLines { get; init; }

    /// <summary>Telephone number.</summary>
    public required string Telephone { get; init; }

    /// <summary>Electronic address; either this or <see cref="Web"/> is given.</summary>
    public required string? Email { get; init; }

    /// <summary>Web address.</summary>
    public required string? Web { get; init; }

    /// <summary>Emergency telephone number, where a place of sale asks for one.</summary>
    public required string? EmergencyTelephone { get; init; }

    /// <summary>VAT number, for the UFI; null when not declared.</summary>
    public required VatNumber? Vat { get; init; }

    /// <summary>Product category for the poison centres where a candle declares none; null when not declared.</summary>
    public string? ProductCategory { get; init; }

    /// <summary>What prices are reckoned by; null when not declared.</summary>
    public Rates? Rates { get; init; }

    /// <summary>Connection string of the register that several benches share; null when it is a file in the folder.</summary>
    public string? SharedRegister { get; init; }

    /// <summary>How it was written.</summary>
    public Writing Writing { get; init; } = Writing.Plain;

    /// <summary>Who stands behind the candle beside the maker.</summary>
    public MarketParties Parties { get; init; } = MarketParties.None;
}
