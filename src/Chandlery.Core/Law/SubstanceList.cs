using System.Collections.Concurrent;
using Chandlery.Core.Declared;
using Chandlery.Core.Law.AnnexVi;
using Chandlery.Yaml;

namespace Chandlery.Core.Law;

/// <summary>What is known of substances beyond what suppliers declare. Nothing is read before a substance is asked for.</summary>
/// <param name="table">The table of harmonised classes; null for none.</param>
/// <param name="more">Entries that the table does not have.</param>
/// <param name="known">Substances of the trade.</param>
/// <param name="expected">Classes that are not law yet.</param>
/// <param name="extracts">The cosmetics law's names of plants' oils and extracts.</param>
public sealed class SubstanceList(
    Lazy<AnnexTable>? table,
    IReadOnlyList<EntryHistory> more,
    Lazy<IReadOnlyList<KnownSubstance>> known,
    IReadOnlyList<ExpectedClasses> expected,
    IReadOnlyList<string> extracts
)
{
    private readonly Lazy<Dictionary<string, KnownSubstance>> byNumber = new(() => ByNumber(known.Value));

    private readonly ConcurrentDictionary<string, IReadOnlyList<SubstanceIdentity>> meantByName = new(StringComparer.Ordinal);

    private readonly Lazy<ILookup<string, KnownSubstance>> byName = new(() =>
        known.Value.SelectMany(k => NamesOf(k).Distinct().Select(n => (n, k))).ToLookup(pair => pair.n, pair => pair.k)
    );

    /// <summary>A list that knows nothing.</summary>
    public static SubstanceList Empty { get; } = new(null, [], new Lazy<IReadOnlyList<KnownSubstance>>([]), [], []);

    /// <summary>Substances of the trade.</summary>
    public IReadOnlyList<KnownSubstance> Known => known.Value;

    /// <summary>The table of harmonised classes; null where there is none.</summary>
    public AnnexTable? Table => table?.Value;

    /// <summary>What is known of a substance on a day; where several go by the name of one without a number, of all of them.</summary>
    public Listing Find(SubstanceIdentity identity, DateOnly day, HarmonisedClasses here)
    {
        IReadOnlyList<SubstanceIdentity> meant = Meant(identity);
        IReadOnlyList<EntryHistory> histories = HistoriesOf(meant);
        LegalAct? upTo = LastTakenOver(here);
        List<HarmonisedEntry> entries = [.. InForce(histories, meant, day, upTo)];
        List<HarmonisedEntry> elsewhere = upTo is null ? [] : [.. InForce(histories, meant, day, null).Except(entries)];
        string[] cas = [.. meant.SelectMany(CasNumbersOf).Distinct()];
        return new Listing(
            entries,
            elsewhere,
            meant.Select(KnownAs).FirstOrDefault(k => k is not null),
            [.. expected.Where(e => e.CasNumbers.Intersect(cas).Any())]
        )
        {
            Meant = meant,
            CasNumbers = cas,
            ExtractName = meant.Select(KnownAs).Select(k => k?.AllergenName).FirstOrDefault(n => n is not null && IsExtract(n)),
            Groups = entries.Count == 0 ? GroupsOf(identity, day, upTo) : [],
        };
    }

    /// <summary>
    /// The substances that a line of a sheet is taken for: itself where it has a number. One without a number is what goes by exactly
    /// its name in the trade, or where that has no entry, also what the table calls so.
    /// </summary>
    public IReadOnlyList<SubstanceIdentity> Meant(SubstanceIdentity identity) =>
        identity.Cas is not null || identity.Ec is not null ? [Numbered(identity, KnownAs(identity))]
        : identity.PlainName.Length == 0 ? []
        : meantByName.GetOrAdd(identity.PlainName, _ => [.. ByName(identity)]);

    private IEnumerable<SubstanceIdentity> ByName(SubstanceIdentity identity)
    {
        List<SubstanceIdentity> trade =
        [
            .. Named(identity.Name).Select(k => Numbered(identity with { Cas = CasNumber.Parse(k.Cas).OrNull() }, k)),
        ];
        return trade.Exists(t => Histories(t).Count > 0)
            ? trade
            : trade
                .Concat(
                    more.SelectMany(h => h.Versions)
                        .SelectMany(v => v.Members)
                        .Where(m => m.Names.Any(n => PlainText.Of(n) == identity.PlainName))
                        .Concat(Table?.Named(identity.PlainName) ?? [])
                        .Select(m =>
                            identity with
                            {
                                Cas = CasNumber.Parse(m.Cas ?? "").OrNull(),
                                Ec = EcNumber.Parse(m.Ec ?? "").OrNull(),
                            }
                        )
                        .Where(i => i.Cas is not null || i.Ec is not null)
                )
                .Distinct();
    }

    private IEnumerable<string> CasNumbersOf(SubstanceIdentity meant) =>
        meant.Cas is { } cas
            ? [cas.Text]
            : known
                .Value.Where(k => k.Ec is not null && k.Ec == meant.Ec?.Text)
                .Select(k => k.Cas)
                .Concat(Histories(meant).SelectMany(h => h.Versions).Select(v => v.Member(meant)?.Cas).OfType<string>());

    /// <summary>True where what an act says of the table holds in the place.</summary>
    public bool IsTakenOver(LegalAct act, HarmonisedClasses here) => LastTakenOver(here) is not { } last || act.Order <= last.Order;

    /// <summary>True where one entry of the table, in any of its versions, has both CAS numbers.</summary>
    public bool StandInOneEntry(string cas, string other) =>
        Histories(new SubstanceIdentity("", CasNumber.Parse(cas).OrNull(), null))
            .SelectMany(h => h.Versions)
            .Any(v => v.Members.Any(m => m.Cas == cas) && v.Members.Any(m => m.Cas == other));

    /// <summary>True where one draft speaks of both CAS numbers.</summary>
    public bool StandInOneDraft(string cas, string other) => expected.Any(e => e.CasNumbers.Contains(cas) && e.CasNumbers.Contains(other));

    /// <summary>True where a name is the cosmetics law's for the oil or extract of a plant, whatever number it is sold under.</summary>
    public bool IsExtract(string allergenName) => extracts.Contains(allergenName, StringComparer.OrdinalIgnoreCase);

    private LegalAct? LastTakenOver(HarmonisedClasses here) => here.UpTo.Length == 0 ? null : Table?.Rules.Act(here.UpTo);

    /// <summary>Every entry that has ever covered the substance.</summary>
    public IReadOnlyList<EntryHistory> HistoriesOf(SubstanceIdentity identity) => HistoriesOf(Meant(identity));

    /// <summary>The substance of the trade that has this CAS number, or this EC number where there is no CAS number; null when none has.</summary>
    public KnownSubstance? KnownAs(SubstanceIdentity identity) =>
        byNumber.Value.GetValueOrDefault(identity.Cas?.Text ?? identity.Ec?.Text ?? "");

    /// <summary>Substances of the trade that go by a name.</summary>
    public IEnumerable<KnownSubstance> Named(string name) => byName.Value[PlainText.Of(name)];

    /// <summary>Entries for whole groups that a substance may be one of on a day, when none covers it by number.</summary>
    private IReadOnlyList<HarmonisedEntry> GroupsOf(SubstanceIdentity identity, DateOnly day, LegalAct? upTo) =>
        [.. (Table?.GroupsOf(identity.Name) ?? []).Select(h => h.On(day, upTo)).OfType<HarmonisedEntry>()];

    // Some entries have an EC number only: a sheet that gives the CAS number alone means them too.
    private static SubstanceIdentity Numbered(SubstanceIdentity identity, KnownSubstance? known) =>
        identity.Ec is null && known?.Ec is { } ec ? identity with { Ec = EcNumber.Parse(ec).Value } : identity;

    private IReadOnlyList<EntryHistory> Histories(SubstanceIdentity identity) =>
        [.. more.Where(h => h.Versions.Any(v => v.Member(identity) is not null)), .. Table?.Of(identity) ?? []];

    // Several numbers of one entry find it once.
    private IReadOnlyList<EntryHistory> HistoriesOf(IReadOnlyList<SubstanceIdentity> meant) =>
        meant.Count == 1
            ? Histories(meant[0])
            : [.. meant.SelectMany(Histories).DistinctBy(h => h.IndexNumber.Length == 0 ? (object)h : h.IndexNumber)];

    private static IEnumerable<HarmonisedEntry> InForce(
        IReadOnlyList<EntryHistory> histories,
        IReadOnlyList<SubstanceIdentity> meant,
        DateOnly day,
        LegalAct? upTo
    ) => histories.Select(h => h.On(day, upTo)).OfType<HarmonisedEntry>().Where(e => meant.Any(m => e.Member(m) is not null));

    private static IEnumerable<string> NamesOf(KnownSubstance substance) =>
        substance.Names.Concat(substance.AllergenRows).Select(PlainText.Of);

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
