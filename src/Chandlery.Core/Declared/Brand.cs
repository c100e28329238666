using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>How a maker's labels look.</summary>
public sealed record Brand : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>The design of candles that name none; null for none.</summary>
    public required string? Design { get; init; }

    /// <summary>Name on the front; null for the maker's.</summary>
    public required string? Name { get; init; }

    /// <summary>Letters for seals; null for the initials of the candle's name.</summary>
    public required string? Monogram { get; init; }

    /// <summary>A line under the candle's name; null for none.</summary>
    public required string? StrapLine { get; init; }

    /// <summary>File of the logo, SVG or PNG, beside the declaration; null for none.</summary>
    public required string? Logo { get; init; }

    /// <summary>Place of <see cref="Logo"/> in the file.</summary>
    public required TextPlace LogoPlace { get; init; }

    /// <summary>Colour of the stock that fronts are printed on; null for white.</summary>
    public required Tint? Paper { get; init; }

    /// <summary>Colour of dark grounds and large type; null for the design's own.</summary>
    public required Tint? Deep { get; init; }

    /// <summary>Colour of light grounds, and of type on dark ones; null for the design's own.</summary>
    public required Tint? Light { get; init; }

    /// <summary>Colour of what stands out; null for the design's own.</summary>
    public required Tint? Accent { get; init; }

    /// <summary>Colours of notes; those that are missing are the program's.</summary>
    public required IReadOnlyDictionary<Scent, Tint> Notes { get; init; }

    /// <summary>Font file for names; null for the program's own face.</summary>
    public required string? NameFont { get; init; }

    /// <summary>Place of <see cref="NameFont"/> in the file.</summary>
    public required TextPlace NameFontPlace { get; init; }

    /// <summary>True when an ornament may be drawn from the shares of the oils, so that they could be read off the label.</summary>
    public required bool ShowsShares { get; init; }

    /// <summary>True to print fronts in one ink, <see cref="Deep"/>.</summary>
    public required bool OneInk { get; init; }
}
