using Chandlery.Core.Asked.Ceilings;

namespace Chandlery.Workbench.Desks;

/// <summary>A stretch of the load line in which the same holds.</summary>
/// <param name="From">Where it begins, percent in the line's basis.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Kind">free (nothing to say), named (substances are named), warning (a hazard label) or broken (a declared limit is).</param>
/// <param name="Holds">What holds in it.</param>
internal sealed record LoadZone(double From, double To, string Kind, IReadOnlyList<string> Holds)
{
    /// <summary>The stretch in which these consequences hold.</summary>
    public static LoadZone Of(double from, double to, IReadOnlyDictionary<string, ConsequenceKind> holds) =>
        new(
            from,
            to,
            holds.Values.Contains(ConsequenceKind.BrokenLimit) ? "broken"
                : holds.Values.Any(k => k is ConsequenceKind.HazardClass or ConsequenceKind.SignalWord) ? "warning"
                : holds.Count > 0 ? "named"
                : "free",
            [.. holds.Keys]
        );
}
