using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A burn test of a candle: what was tested, how it burnt, and the limits that the maker set.</summary>
public sealed record Test : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>The candle.</summary>
    public required Reference Candle { get; init; }

    /// <summary>The day of the last burn.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Who burnt and measured.</summary>
    public required string By { get; init; }

    /// <summary>The vessel that was tested; null for what stands by itself.</summary>
    public required Reference? Vessel { get; init; }

    /// <summary>The wax that was tested.</summary>
    public required Reference Wax { get; init; }

    /// <summary>Kind of the wicks, in the maker's words; null when not noted.</summary>
    public required string? WickKind { get; init; }

    /// <summary>How many wicks.</summary>
    public required int WickCount { get; init; }

    /// <summary>Share of all oils in the candle that was tested.</summary>
    public required MassPercent OilShare { get; init; }

    /// <summary>Temperature of the room; null when not noted.</summary>
    public required Celsius? Room { get; init; }

    /// <summary>The candles that were burnt.</summary>
    public required IReadOnlyList<BurnSample> Samples { get; init; }

    /// <summary>The maker's own limits.</summary>
    public required BurnLimits Limits { get; init; }

    /// <summary>Names of photographs.</summary>
    public required IReadOnlyList<string> Photographs { get; init; }
}
