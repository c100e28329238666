using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>A rule of limits, worst first.</summary>
public sealed record LimitRule(
    string Group,
    string Clause,
    string Confidence,
    string Stricter,
    InForce InForce,
    IReadOnlyList<HazardCategory> Names,
    bool AddsSubstances,
    IReadOnlyList<Rung> Rungs,
    Implication? ImpliedBy,
    Elicitation? Elicitation,
    NonAdditive? WhereAddingMayFail
) : ClassRule(Group, Clause, Confidence, Stricter, InForce, Names);
