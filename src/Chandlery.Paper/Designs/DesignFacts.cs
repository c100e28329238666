using Chandlery.Core.Quantities;

namespace Chandlery.Paper.Designs;

/// <summary>What a front may say and draw of a candle.</summary>
public sealed record DesignFacts
{
    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Who it is by.</summary>
    public required string MakerName { get; init; }

    /// <summary>One to three letters.</summary>
    public required string Monogram { get; init; }

    /// <summary>A line under the name; empty for none.</summary>
    public required string StrapLine { get; init; }

    /// <summary>What it is, in the first language.</summary>
    public required string Kind { get; init; }

    /// <summary>How it smells.</summary>
    public required string Scents { get; init; }

    /// <summary>Net quantity with its unit.</summary>
    public required string Quantity { get; init; }

    /// <summary>Net quantity, grams.</summary>
    public required double NetGrams { get; init; }

    /// <summary>Grams of wax and all else but oil; 0 where the recipe stays the maker's.</summary>
    public required double WaxGrams { get; init; }

    /// <summary>Number of wicks.</summary>
    public required int Wicks { get; init; }

    /// <summary>The words for wick or wicks, hours, grams and wax, in the first language.</summary>
    public required DesignWords Words { get; init; }

    /// <summary>How figures are written in that language.</summary>
    public required FigureFormat Figures { get; init; }

    /// <summary>Hours that it burns; 0 when nobody has tested it.</summary>
    public required double BurnHours { get; init; }

    /// <summary>Batch code; empty for none.</summary>
    public required string Batch { get; init; }

    /// <summary>The oils, largest share first; empty for a candle without.</summary>
    public required IReadOnlyList<BlendPart> Parts { get; init; }

    /// <summary>Oil in the candle, percent, or a figure from its name where the recipe stays the maker's.</summary>
    public required double LoadPercent { get; init; }

    /// <summary>True when the shares of the oils may be told.</summary>
    public required bool ShowsShares { get; init; }

    /// <summary>Length over width of the vessel seen from above; 1 for a round one.</summary>
    public required double VesselRatio { get; init; }

    /// <summary>True for a round vessel.</summary>
    public required bool VesselIsRound { get; init; }
}
