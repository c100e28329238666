using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>How a mixture gets into one hazard group.</summary>
/// <param name="Group">The group, as the vocabulary names it.</param>
/// <param name="Clause">Clause that gives the rule.</param>
/// <param name="Confidence">How the row was checked.</param>
/// <param name="Stricter">Which reading was taken where the law leaves two; empty otherwise.</param>
/// <param name="InForce">When it holds for mixtures newly placed on the market.</param>
/// <param name="Names">Results for which the substances behind them are named on the label.</param>
public abstract record ClassRule(
    string Group,
    string Clause,
    string Confidence,
    string Stricter,
    InForce InForce,
    IReadOnlyList<HazardCategory> Names
);
