using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>Classes that were drafted or proposed for a substance and are not law.</summary>
/// <param name="Name">The substance.</param>
/// <param name="CasNumbers">Its CAS numbers.</param>
/// <param name="Claims">The classes.</param>
/// <param name="Act">What they are drafted in.</param>
/// <param name="Says">What follows for a candle, as the end of a sentence.</param>
/// <param name="Source">Where that was read.</param>
public sealed record ExpectedClasses(
    string Name,
    IReadOnlyList<string> CasNumbers,
    IReadOnlyList<HazardClaim> Claims,
    string Act,
    string Says,
    string Source
);
