using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>Which ingredients a notification to the poison centres names, and how exactly.</summary>
public sealed record PoisonCentreRules
{
    /// <summary>Areas of hazard for which a mixture is notified.</summary>
    public required IReadOnlyList<HazardArea> Areas { get; init; }

    /// <summary>Share from which hazardous ingredients, and those of unknown hazard, are named.</summary>
    public required MassPercent HazardousFrom { get; init; }

    /// <summary>Share from which other ingredients are named.</summary>
    public required MassPercent OthersFrom { get; init; }

    /// <summary>Classes of major concern.</summary>
    public required IReadOnlyList<HazardCategory> MajorConcern { get; init; }

    /// <summary>Widest ranges for ingredients of major concern, highest share first.</summary>
    public required IReadOnlyList<RangeWidth> MajorConcernWidths { get; init; }

    /// <summary>Widest ranges for other ingredients, highest share first.</summary>
    public required IReadOnlyList<RangeWidth> OtherWidths { get; init; }

    /// <summary>Where the ranges stand.</summary>
    public required Citation Clause { get; init; }

    /// <summary>How the rows were checked.</summary>
    public required string Confidence { get; init; }
}
