using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>How a mixture gets into one hazard group.</summary>
public abstract record ClassRule
{
    /// <summary>The group, as the vocabulary names it.</summary>
    public required string Group { get; init; }

    /// <summary>Clause that gives the rule.</summary>
    public required Citation Clause { get; init; }

    /// <summary>How the row was checked.</summary>
    public required string Confidence { get; init; }

    /// <summary>Which reading was taken where the law leaves two; empty otherwise.</summary>
    public required string Stricter { get; init; }

    /// <summary>When it holds for mixtures newly placed on the market.</summary>
    public required InForce InForce { get; init; }

    /// <summary>Results for which the substances behind them are named on the label.</summary>
    public required IReadOnlyList<HazardCategory> Names { get; init; }

    /// <summary>The categories that the rule can give, worst first.</summary>
    public abstract IEnumerable<HazardCategory> Results { get; }
}
