using Chandlery.Core.Declared;
using Chandlery.Core.Law.AnnexVi;
using Chandlery.Yaml;

namespace Chandlery.Core.Law;

/// <summary>What is known of substances beyond what suppliers declare. Nothing is read before a substance is asked for.</summary>
/// <param name="table">The table of harmonised classes; null for none.</param>
/// <param name="more">Entries that the table does not have.</param>
/// <param name="known">Substances of the trade.</param>
/// <param name="expected">Classes that are not law yet.</param>
public sealed class SubstanceList(
    Lazy<AnnexTable>? table,
    IReadOnlyList<EntryHistory> more,
    Lazy<IReadOnlyList<KnownSubstance>> known,
    IReadOnlyList<ExpectedClasses> expected
)
{
    private readonly Lazy<Dictionary<string, KnownSubstance>> byNumber = new(() => ByNumber(known.Value));

    private readonly Lazy<ILookup<string, KnownSubstance>> byName = new(() =>
        known.Value.SelectMany(k => NamesOf(k).Distinct().Select(n => (n, k))).ToLookup(pair => pair.n, pair => pair.k)
    );

    /// <summary>A list that knows nothing.</summary>
    public static SubstanceList Empty { get; } = new(null, [], new Lazy<IReadOnlyList<KnownSubstance>>([]), []);

    /// <summary>Substances of the trade.</summary>
    public IReadOnlyList<KnownSubstance> Known => known.Value;

    /// <summary>The table of harmonised classes; null where there is none.</summary>
    public AnnexTable? Table => table?.Value;

    /// <summary>What is known of a substance on a day.</summary>
    public Listing Find(SubstanceIdentity identity, DateOnly day, HarmonisedClasses here)
    {
        KnownSubstance? known = KnownAs(identity);
        identity = Numbered(identity, known);
        IReadOnlyList<EntryHistory> histories = Histories(identity);
        LegalAct? upTo = LastTakenOver(here);
        List<HarmonisedEntry> entries = [.. InForce(histories, identity, day, upTo)];
        List<HarmonisedEntry> elsewhere = upTo is null ? [] : [.. InForce(histories, identity, day, null).Except(entries)];
        return new Listing(entries, elsewhere, known, ExpectedOf(identity))
        {
            Groups = entries.Count == 0 ? GroupsOf(identity, day, upTo) : [],
        };
    }

    /// <summary>True where what an act says of the table holds in the place.</summary>
    public bool IsTakenOver(LegalAct act, HarmonisedClasses here) => LastTakenOver(here) is not { } last || act.Order <= last.Order;

    private LegalAct? LastTakenOver(HarmonisedClasses here) => here.UpTo.Length == 0 ? null : Table?.Rules.Act(here.UpTo);

    /// <summary>Every entry that has ever covered the substance.</summary>
    public IReadOnlyList<EntryHistory> HistoriesOf(SubstanceIdentity identity) => Histories(Numbered(identity, KnownAs(identity)));

    /// <summary>The substance of the trade that has this CAS number, or this EC number where there is no CAS number; null when none has.</summary>
    public KnownSubstance? KnownAs(SubstanceIdentity identity) =>
        byNumber.Value.GetValueOrDefault(identity.Cas?.Text ?? identity.Ec?.Text ?? "");

    /// <summary>Substances of the trade that go by a name.</summary>
    public IEnumerable<KnownSubstance> Named(string name) => byName.Value[PlainText.Of(name)];

    /// <summary>Entries for whole groups that a substance may be one of on a day, when none covers it by number.</summary>
    private IReadOnlyList<HarmonisedEntry> GroupsOf(SubstanceIdentity identity, DateOnly day, LegalAct? upTo) =>
        [.. (Table?.GroupsOf(identity.Name) ?? []).Select(h => h.On(day, upTo)).OfType<HarmonisedEntry>()];

    /// <summary>Classes that are drafted for a substance.</summary>
    public IReadOnlyList<ExpectedClasses> ExpectedOf(SubstanceIdentity identity) =>
        [.. expected.Where(e => identity.Cas is { } cas && e.CasNumbers.Contains(cas.Text))];

    // Some entries have an EC number only: a sheet that gives the CAS number alone means them too.
    private static SubstanceIdentity Numbered(SubstanceIdentity identity, KnownSubstance? known) =>
        identity.Ec is null && known?.Ec is { } ec ? identity with { Ec = EcNumber.Parse(ec).Value } : identity;

    private IReadOnlyList<EntryHistory> Histories(SubstanceIdentity identity) =>
        [.. more.Where(h => h.Versions.Any(v => v.Member(identity) is not null)), .. Table?.Of(identity) ?? []];

    private static IEnumerable<HarmonisedEntry> InForce(
        IReadOnlyList<EntryHistory> histories,
        SubstanceIdentity identity,
        DateOnly day,
        LegalAct? upTo
    ) => histories.Select(h => h.On(day, upTo)).OfType<HarmonisedEntry>().Where(e => e.Member(identity) is not null);

    private static IEnumerable<string> NamesOf(KnownSubstance substance) =>
        substance.Names.Append(substance.AllergenName).OfType<string>().Select(PlainText.Of);

    private static Dictionary<string, KnownSubstance> ByNumber(IReadOnlyList<KnownSubstance> known)
    {
        var found = new Dictionary<string, KnownSubstance>(StringComparer.Ordinal);
        foreach (KnownSubstance substance in known)
        {
            found.TryAdd(substance.Cas, substance);
            if (substance.Ec is { } ec)
            {
                found.TryAdd(ec, substance);
            }
        }

        return found;
    }
}
