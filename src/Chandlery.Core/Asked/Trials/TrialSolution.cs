using Chandlery.Core.Law;

namespace Chandlery.Core.Asked.Trials;

/// <summary>What was found for a trial under one edition of the law.</summary>
/// <param name="Edition">The edition.</param>
/// <param name="Places">Places of sale under it.</param>
/// <param name="MissedNow">What the trial as it is does not keep to; empty when it keeps to all.</param>
/// <param name="LargestLoad">The largest load of its blend; null when no load will do, or when the wax declares no highest load.</param>
/// <param name="Nearest">The nearest blend at its load; null when none was found.</param>
/// <param name="IsNearestProven">
/// Whether it was shown that no blend in hundredths of a percent is nearer, or that there is none; otherwise there may be one.
/// </param>
public sealed record TrialSolution(
    Edition Edition,
    IReadOnlyList<Place> Places,
    IReadOnlyList<string> MissedNow,
    TrialAnswer? LargestLoad,
    TrialAnswer? Nearest,
    bool IsNearestProven
);
