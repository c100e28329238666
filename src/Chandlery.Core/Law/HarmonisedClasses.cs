using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>What harmonised classes are under an edition.</summary>
/// <param name="Bind">True where they bind suppliers; false where they are only evidence.</param>
/// <param name="CitedAs">How an entry is cited; <c>{index}</c> and <c>{act}</c> stand for its index number and act.</param>
/// <param name="Clause">Where it stands that they bind; empty where they do not.</param>
public sealed record HarmonisedClasses(bool Bind, string CitedAs, Citation Clause)
{
    /// <summary>How an entry is cited here.</summary>
    public string Cite(SubstanceEntry entry) =>
        CitedAs
            .Replace("{index}", entry.IndexNumber ?? "no index number", StringComparison.Ordinal)
            .Replace("{act}", entry.Act, StringComparison.Ordinal);
}
