using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>The rule of acute toxicity estimates for one route of exposure.</summary>
public sealed record AcuteToxicityRule : ClassRule
{
    /// <summary>The forms in which a substance may be taken in by this route; a class without a figure is read as the first.</summary>
    public required IReadOnlyList<ExposureRoute> Forms { get; init; }

    /// <summary>Unit of estimates and bounds, by form.</summary>
    public required IReadOnlyDictionary<ExposureRoute, string> Units { get; init; }

    /// <summary>How ingredients of unknown toxicity are treated.</summary>
    public required UnknownToxicity Unknown { get; init; }

    /// <summary>The categories, worst first.</summary>
    public required IReadOnlyList<ToxicityBound> Bounds { get; init; }

    /// <inheritdoc/>
    public override IEnumerable<HazardCategory> Results => Bounds.Select(b => b.Result);
}
