using Chandlery.Core.Hazards;

namespace Chandlery.Core.Assessed;

/// <summary>Something that the maker must know.</summary>
/// <param name="Gravity">How grave it is.</param>
/// <param name="What">What was found.</param>
/// <param name="Clause">Where the rule stands; empty when it is no rule of law.</param>
public sealed record Finding(Gravity Gravity, string What, Citation Clause);
