using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>How a label must look in a period.</summary>
public sealed record LabelFormat
{
    /// <summary>Short name.</summary>
    public required string Id { get; init; }

    /// <summary>Law or expected.</summary>
    public required LegalStatus Status { get; init; }

    /// <summary>First day.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Where it stands.</summary>
    public required Citation Clause { get; init; }

    /// <summary>Sizes by capacity.</summary>
    public required IReadOnlyList<SizeBand> Bands { get; init; }

    /// <summary>Where the letter height stands.</summary>
    public required Citation XHeightClause { get; init; }

    /// <summary>Least distance of lines as a multiple of the type size.</summary>
    public required double LineSpacing { get; init; }

    /// <summary>Where that stands.</summary>
    public required Citation LineSpacingClause { get; init; }

    /// <summary>How many times the area of a pictogram goes into the panel's, where there is room for one as large as that.</summary>
    public required double PanelToPictogram { get; init; }

    /// <summary>Where that stands.</summary>
    public required Citation PanelToPictogramClause { get; init; }

    /// <summary>The sizes for a package of this capacity.</summary>
    public SizeBand BandFor(Millilitres capacity) => Bands.First(b => b.UpTo is not { } upTo || capacity.Value <= upTo.Value);
}
