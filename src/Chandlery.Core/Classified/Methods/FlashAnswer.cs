using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Classified.Methods;

/// <summary>What a liquid's measured values come to.</summary>
/// <param name="Category">Its category; null for none, and where it is not known.</param>
/// <param name="Because">What decided, as a sentence.</param>
/// <param name="Clause">Where that stands.</param>
/// <param name="IsKnown">False where nobody can say whether it is flammable.</param>
internal sealed record FlashAnswer(HazardCategory? Category, string Because, Citation Clause, bool IsKnown)
{
    /// <summary>The measured flash point that gave the category; null where a document did, and without one.</summary>
    public Celsius? Measured { get; init; }

    /// <summary>
    /// The categories that measured values leave open, null for none of them; empty where one is known, and where nothing was measured
    /// that counts.
    /// </summary>
    public IReadOnlyList<HazardCategory?> LeavesOpen { get; init; } = [];
}
