using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>The rule of acute toxicity estimates for one route.</summary>
public sealed record AcuteToxicityRule(
    string Group,
    string Clause,
    string Confidence,
    string Stricter,
    InForce InForce,
    IReadOnlyList<HazardCategory> Names,
    IReadOnlyList<ExposureRoute> Routes,
    string Unit,
    UnknownToxicity Unknown,
    IReadOnlyList<ToxicityBound> Bounds
) : ClassRule(Group, Clause, Confidence, Stricter, InForce, Names);
