using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law;

/// <summary>What harmonised classes are under an edition.</summary>
/// <param name="Bind">True where they bind suppliers; false where they are only evidence.</param>
/// <param name="CitedAs">How an entry is cited; <c>{index}</c> and <c>{act}</c> stand for its index number and act.</param>
/// <param name="Clause">Where it stands that they bind; empty where they do not.</param>
/// <param name="UpTo">The last act that was taken over, by its short name; empty where all were.</param>
/// <param name="LaterCitedAs">How an entry of a later act is cited, as <paramref name="CitedAs"/>.</param>
/// <param name="Later">What is said of entries that later acts brought elsewhere; empty where all were taken over.</param>
public sealed record HarmonisedClasses(
    bool Bind,
    string CitedAs,
    Citation Clause,
    string UpTo = "",
    string Later = "",
    string LaterCitedAs = ""
)
{
    /// <summary>Substances that the place's own list is known to name.</summary>
    public IReadOnlyList<NamedInOwnList> Named { get; init; } = [];

    /// <summary>What is said of a substance's entries that later acts brought elsewhere.</summary>
    /// <param name="casNumbers">The substance's CAS numbers.</param>
    public string LaterOf(IReadOnlyList<string> casNumbers) =>
        Named.FirstOrDefault(n => n.CasNumbers.Intersect(casNumbers).Any())?.Says ?? Later;

    /// <summary>How an entry is cited here.</summary>
    public string Cite(HarmonisedEntry entry) => Cite(CitedAs, entry);

    /// <summary>How an entry is cited that a later act brought elsewhere.</summary>
    public string CiteLater(HarmonisedEntry entry) => Cite(LaterCitedAs, entry);

    private static string Cite(string form, HarmonisedEntry entry) =>
        form.Replace("{index}", entry.IndexNumber.Length == 0 ? "no index number" : entry.IndexNumber, StringComparison.Ordinal)
            .Replace("{act}", entry.Act.Title, StringComparison.Ordinal);
}
