using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>Papers that are not made under an edition, since what its law asks of them is not surely known.</summary>
/// <param name="Papers">Short names of the papers.</param>
/// <param name="Hazards">Only where the candle is of one of these classes; empty for always.</param>
/// <param name="Because">Why.</param>
/// <param name="Clause">Where what is not at hand stands.</param>
public sealed record Refusal(IReadOnlyList<string> Papers, IReadOnlyList<HazardCategory> Hazards, string Because, Citation Clause)
{
    private const string Label = "label";

    /// <summary>Whether nothing may be sold there, because the refused paper is the label.</summary>
    public bool StopsSale => Papers.Contains(Label);

    /// <summary>Whether it holds for a candle of these classes.</summary>
    public bool Holds(IEnumerable<HazardCategory> classes) => Hazards.Count == 0 || classes.Any(Hazards.Contains);
}
