using Chandlery.Core.Asked.Trials;

namespace Chandlery.Workbench.Answers;

/// <summary>What a candle of a trial's blend would be.</summary>
/// <param name="Id">Name of the trial.</param>
/// <param name="Blend">Its oils in percent of the blend.</param>
/// <param name="Problems">Why it cannot be assessed; empty when it can.</param>
/// <param name="FreeUpTo">The largest load without a hazard class, percent of the wax; null when there is none, or nobody can say.</param>
/// <param name="Verdicts">One for each edition of the law; null when it cannot be assessed.</param>
internal sealed record TrialNote(
    string Id,
    IReadOnlyList<OilPercent> Blend,
    IReadOnlyList<string> Problems,
    double? FreeUpTo,
    IReadOnlyList<TrialLine>? Verdicts
);
