using Chandlery.Core.Declared;

namespace Chandlery.Core.Law;

/// <summary>What is known of a substance on a day under an edition of the law.</summary>
/// <param name="Entries">Entries of the table that hold there; several where the number stands in several.</param>
/// <param name="Elsewhere">Entries that hold in the Union and were not taken over there.</param>
/// <param name="Known">Its names in the trade; null when not known.</param>
/// <param name="Expected">Classes that are drafted for it.</param>
public sealed record Listing(
    IReadOnlyList<HarmonisedEntry> Entries,
    IReadOnlyList<HarmonisedEntry> Elsewhere,
    KnownSubstance? Known,
    IReadOnlyList<ExpectedClasses> Expected
)
{
    /// <summary>Entries for whole groups that it may be one of by its name; none where an entry covers it by number.</summary>
    public IReadOnlyList<HarmonisedEntry> Groups { get; init; } = [];

    /// <summary>
    /// The substances that it is taken for: itself where it has a number, else those that go by exactly its name; none where no list
    /// has the name.
    /// </summary>
    public IReadOnlyList<SubstanceIdentity> Meant { get; init; } = [];

    /// <summary>The CAS numbers that it has, or that go with its EC number or its name.</summary>
    public IReadOnlyList<string> CasNumbers { get; init; } = [];

    /// <summary>The cosmetics law's name of the plant's oil or extract that it is; null for others.</summary>
    public string? ExtractName { get; init; }

    /// <summary>The names that an entry gives the substance.</summary>
    public IEnumerable<string> NamesIn(HarmonisedEntry entry) =>
        Meant.Select(entry.Member).OfType<EntryMember>().SelectMany(m => m.Names).Distinct();
}
