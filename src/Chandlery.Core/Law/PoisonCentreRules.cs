using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>Which ingredients a notification to the poison centres names, and how exactly.</summary>
public sealed record PoisonCentreRules
{
    /// <summary>Areas of hazard for which a mixture is notified.</summary>
    public required IReadOnlyList<HazardArea> Areas { get; init; }

    /// <summary>Share from which hazardous ingredients, and those of unknown hazard, are named; 0 for all that are identified.</summary>
    public required MassPercent HazardousFrom { get; init; }

    /// <summary>Share from which other ingredients are named.</summary>
    public required MassPercent OthersFrom { get; init; }

    /// <summary>Classes of major concern.</summary>
    public required IReadOnlyList<HazardCategory> MajorConcern { get; init; }

    /// <summary>Widest ranges for ingredients of major concern, highest share first.</summary>
    public required IReadOnlyList<RangeWidth> MajorConcernWidths { get; init; }

    /// <summary>Widest ranges for other ingredients, highest share first.</summary>
    public required IReadOnlyList<RangeWidth> OtherWidths { get; init; }

    /// <summary>How much a share may change before an update and a new UFI are due, highest share first.</summary>
    public required IReadOnlyList<ShareChange> ShareChanges { get; init; }

    /// <summary>Where that stands.</summary>
    public required Citation ShareChangesClause { get; init; }

    /// <summary>Where the ranges stand.</summary>
    public required Citation Clause { get; init; }

    /// <summary>Words that may stand for ingredients.</summary>
    public required IReadOnlyList<GenericIdentifier> GenericIdentifiers { get; init; }

    /// <summary>When several mixtures may be told as one group.</summary>
    public required GroupSubmissionRules Group { get; init; }

    /// <summary>Section of the safety data sheet whose text is told.</summary>
    public required int ToxicologySection { get; init; }

    /// <summary>Where it stands what else is told; every point has a clause.</summary>
    public required IReadOnlyDictionary<NotifiedPoint, Citation> Points { get; init; }

    /// <summary>How the rows were checked.</summary>
    public required string Confidence { get; init; }
}
