using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Law;

/// <summary>The days on which something holds.</summary>
/// <param name="From">First day; null when it always did.</param>
/// <param name="Until">Last day; null when no end is known.</param>
/// <param name="ExistingFrom">First day for what was already on the market on <paramref name="From"/>; null when the same.</param>
public sealed record InForce(DateOnly? From, DateOnly? Until, DateOnly? ExistingFrom = null)
{
    /// <summary>True on that day.</summary>
    /// <param name="day">The day.</param>
    /// <param name="onMarketSince">Since when the candle has been sold; null for a new one.</param>
    public bool On(DateOnly day, DateOnly? onMarketSince = null)
    {
        DateOnly? from = ExistingFrom is not null && onMarketSince < From ? ExistingFrom : From;
        return (from is not { } first || day >= first) && (Until is not { } until || day <= until);
    }

    /// <summary>Days on which something begins or has ended.</summary>
    public IEnumerable<DateOnly> Turns() => new[] { From, ExistingFrom, Until?.AddDays(1) }.OfType<DateOnly>();
}

/// <summary>Which M-factor multiplies a share.</summary>
public enum MWeight
{
    /// <summary>None.</summary>
    None,

    /// <summary>The one for acute aquatic toxicity.</summary>
    Acute,

    /// <summary>The one for chronic aquatic toxicity.</summary>
    Chronic,
}

/// <summary>What a rung counts.</summary>
/// <param name="Hazards">Substances with one of these hazards.</param>
/// <param name="Weight">Factor on their share.</param>
/// <param name="M">M-factor on their share.</param>
/// <param name="IgnoreBelow">Shares below do not count; zero when all count.</param>
public sealed record Term(IReadOnlyList<HazardCategory> Hazards, double Weight, MWeight M, MassPercent IgnoreBelow);

/// <summary>One step of a rule.</summary>
/// <param name="Result">What the mixture is classified as when the step is reached.</param>
/// <param name="Terms">What is counted; a substance counts in the first term that fits it.</param>
/// <param name="Limit">The limit in percent.</param>
public sealed record Rung(HazardCategory Result, IReadOnlyList<Term> Terms, MassPercent Limit);

/// <summary>From which share a sensitiser is named on the label although the mixture need not be classified for it.</summary>
/// <param name="Statement">The supplemental statement, EUH208.</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="FractionOfSpecificLimit">A specific limit replaces the general one by this fraction of itself.</param>
/// <param name="Limits">Limit per category.</param>
public sealed record Elicitation(
    string Statement,
    string Clause,
    double FractionOfSpecificLimit,
    IReadOnlyList<KeyValuePair<HazardCategory, MassPercent>> Limits
);

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

/// <summary>A result in this group that follows from a result in another one.</summary>
/// <param name="Results">The other results.</param>
/// <param name="Gives">What follows.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record Implication(IReadOnlyList<HazardCategory> Results, HazardCategory Gives, string Clause);

/// <summary>The other method for substances whose effects may not add up (acids, bases, aldehydes, phenols...).</summary>
/// <param name="Clause">Where it stands.</param>
/// <param name="Confidence">How the row was checked.</param>
/// <param name="Rungs">Limits for one such substance alone, worst first.</param>
public sealed record NonAdditive(string Clause, string Confidence, IReadOnlyList<Rung> Rungs);

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

/// <summary>One category of acute toxicity.</summary>
/// <param name="Result">The category.</param>
/// <param name="UpTo">Upper bound of the estimate by form (inclusive), in the route's unit.</param>
/// <param name="PointEstimate">Estimate to use for a substance known only by category, by form.</param>
/// <param name="IgnoreBelow">Shares below do not count.</param>
public sealed record ToxicityBound(
    HazardCategory Result,
    IReadOnlyDictionary<ExposureRoute, double> UpTo,
    IReadOnlyDictionary<ExposureRoute, double> PointEstimate,
    MassPercent IgnoreBelow
);

/// <summary>How ingredients of unknown acute toxicity are treated.</summary>
/// <param name="TakenOutAbove">Above this share they are taken out of the hundred.</param>
/// <param name="SaidFrom">From this share on the label says so.</param>
/// <param name="Clause">Where it stands.</param>
public sealed record UnknownToxicity(MassPercent TakenOutAbove, MassPercent SaidFrom, string Clause);

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

/// <summary>Hazards that are not computed, and why.</summary>
/// <param name="Hazards">The hazards.</param>
/// <param name="Why">The reason, for the reader of an assessment.</param>
/// <param name="Clause">Where the law says how to find them.</param>
public sealed record NotComputed(IReadOnlyList<HazardCategory> Hazards, string Why, string Clause);
