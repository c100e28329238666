using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Declared;

/// <summary>A candle, or another scented product, as planned.</summary>
public sealed record Candle : IDeclaration
{
    /// <summary>File name without its ending.</summary>
    public required string Id { get; init; }

    /// <summary>Where it is declared.</summary>
    public required TextPlace Place { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Indoors or outdoors.</summary>
    public required CandleUse Use { get; init; }

    /// <summary>What kind of product it is; null for a container candle.</summary>
    public Reference? Kind { get; init; }

    /// <summary>What it is filled into; null when it stands by itself.</summary>
    public required Reference? Vessel { get; init; }

    /// <summary>Size of a body that stands by itself; null for what is filled into a vessel.</summary>
    public VesselSize? Size { get; init; }

    /// <summary>Nominal quantity on the label; of a liquid its mass, reckoned with its density.</summary>
    public required Grams NetMass { get; init; }

    /// <summary>Nominal quantity of a liquid; null for what is sold by mass.</summary>
    public Millilitres? NetVolume { get; init; }

    /// <summary>What was measured of a liquid; null when nothing is declared, and for solids.</summary>
    public LiquidFacts? Liquid { get; init; }

    /// <summary>The IFRA category that its oils' certificates name for such a product; null for the kind's.</summary>
    public string? IfraCategory { get; init; }

    /// <summary>Its wax, or the liquid base that its oils are dissolved in.</summary>
    public required Reference Wax { get; init; }

    /// <summary>Grams of wax in the scented melt, when the recipe is by mass.</summary>
    public required Grams? WaxWeight { get; init; }

    /// <summary>Fragrance load, when the recipe is not by mass.</summary>
    public required FragranceLoad? Load { get; init; }

    /// <summary>The oils of the blend.</summary>
    public required IReadOnlyList<OilPart> Oils { get; init; }

    /// <summary>Dyes and other extras.</summary>
    public required IReadOnlyList<ExtraPart> Extras { get; init; }

    /// <summary>Second pour, if any.</summary>
    public required TopUp? TopUp { get; init; }

    /// <summary>Its wicks; none for what does not burn.</summary>
    public required Wicks Wicks { get; init; }

    /// <summary>Room kept free below the brim.</summary>
    public required Millimetres? Headspace { get; init; }

    /// <summary>Working temperatures.</summary>
    public required WorkingTemperatures Temperatures { get; init; }

    /// <summary>The places of sale, by code or name.</summary>
    public required IReadOnlyList<Written<PlaceName>> SoldIn { get; init; }

    /// <summary>Languages of the label; empty for the places' own.</summary>
    public required IReadOnlyList<Written<LanguageCode>> Languages { get; init; }

    /// <summary>Label asked for; null for the smallest lawful arrangement that the text fits on.</summary>
    public required LabelRequest? Label { get; init; }

    /// <summary>The front that it asks for; null for none, or for the brand's.</summary>
    public DesignRequest? Design { get; init; }

    /// <summary>Where the label stands.</summary>
    public required LabelPlace LabelStands { get; init; }

    /// <summary>Batch code to print; null when none is known yet.</summary>
    public required string? BatchCode { get; init; }

    /// <summary>Formulation number for the UFI; null when none was given out yet.</summary>
    public required long? FormulationNumber { get; init; }

    /// <summary>Product category for the poison centres; null for the maker's.</summary>
    public string? ProductCategory { get; init; }

    /// <summary>Since when it has been sold; null for a new candle.</summary>
    public required DateOnly? OnMarketSince { get; init; }

    /// <summary>Article number for a bar code; null for none.</summary>
    public required Gtin13? Gtin { get; init; }

    /// <summary>Web address for a QR code; null for none.</summary>
    public required string? InformationUrl { get; init; }

    /// <summary>A picture of it for offers and recalls; null when none is declared.</summary>
    public PictureFile? Picture { get; init; }

    /// <summary>What the maker answers to the questions that the law on product safety asks.</summary>
    public SafetyAnswers Answers { get; init; } = SafetyAnswers.None;

    /// <summary>What it is packed in; null when not declared.</summary>
    public IReadOnlyList<PackagingPart>? Packaging { get; init; }

    /// <summary>Minutes of work that one takes; null when not declared.</summary>
    public double? WorkMinutes { get; init; }

    /// <summary>How it was written.</summary>
    public Writing Writing { get; init; } = Writing.Plain;

    /// <summary>Whether it is filled again from a station in the shop.</summary>
    public bool IsRefilledInShop { get; init; }

    /// <summary>Whether the e-mark stands beside the quantity.</summary>
    public bool EMark { get; init; }
}
