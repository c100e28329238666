using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Core.Law;

/// <summary>
/// Finds names and numbers that stand together and belong to different substances. Numbers that the law itself puts in one row (an entry
/// of the table, the cosmetics law's row of an allergen, a draft) name the same for a label, and are no contradiction.
/// </summary>
/// <param name="list">The list of substances.</param>
public sealed class NumberCheck(SubstanceList list)
{
    /// <summary>The CAS numbers that go with a name, where it stands with another; none where nothing is amiss or the name is not known.</summary>
    public IReadOnlyList<string> CasOfName(SubstanceIdentity identity) =>
        identity.Cas is { } cas && Namesakes(identity) is { Count: > 0 } named && !named.Exists(k => IsOne(k, cas.Text))
            ? [.. named.Select(k => k.Cas)]
            : [];

    /// <summary>
    /// The EC numbers that go with a name, where it stands with another and no CAS number; none where nothing is amiss or not all of
    /// them are known.
    /// </summary>
    public IReadOnlyList<string> EcOfName(SubstanceIdentity identity)
    {
        if (identity is not { Cas: null, Ec: { } ec } || Namesakes(identity) is not { Count: > 0 } named)
        {
            return [];
        }

        bool isTheirs = named.Exists(k => k.Ec is null || k.Ec == ec.Text || Owners(ec).Any(o => IsOne(k, o)));
        return isTheirs ? [] : [.. named.Select(k => k.Ec!).Distinct()];
    }

    /// <summary>
    /// The CAS numbers that go with the identity's EC number, where its CAS number is none of them and goes with another EC number; none
    /// where nothing is amiss, or where one of the two is not known.
    /// </summary>
    public IReadOnlyList<string> CasOfEc(SubstanceIdentity identity)
    {
        if (identity is not { Cas: { } cas, Ec: { } ec })
        {
            return [];
        }

        List<string> own = [.. EcNumbersOf(identity with { Ec = null })];
        if (own.Count == 0 || own.Contains(ec.Text))
        {
            return [];
        }

        List<string> owners = [.. Owners(ec)];
        return owners.Exists(o => o == cas.Text || AreOne(o, cas.Text)) ? [] : owners;
    }

    // Nothing where the name is one that an entry gives the number, whatever else goes by it.
    private List<KnownSubstance> Namesakes(SubstanceIdentity identity)
    {
        List<KnownSubstance> named = [.. list.Named(identity.Name)];
        return
            named.Count > 0
            && list.HistoriesOf(identity)
                .SelectMany(h => h.Versions)
                .SelectMany(v => v.Member(identity)?.Names ?? [])
                .Any(n => PlainText.Of(n) == identity.PlainName)
            ? []
            : named;
    }

    private bool IsOne(KnownSubstance named, string cas) => named.Cas == cas || AreOne(named.Cas, cas);

    private bool AreOne(string a, string b) =>
        list.StandInOneEntry(a, b) || list.StandInOneDraft(a, b) || IsOneAllergen(Known(a), Known(b));

    // A row of the cosmetics law may hold several single substances, each with a name of its own (the two pinenes): these are apart. An
    // extract of one plant, and a number that has no name but the row's, is one with the rest of its row.
    private bool IsOneAllergen(KnownSubstance? a, KnownSubstance? b) =>
        a is not null
        && b is not null
        && a.AllergenRows.Intersect(b.AllergenRows, StringComparer.OrdinalIgnoreCase)
            .Any(row => list.IsExtract(row) || HasOnly(a, row) || HasOnly(b, row));

    private static bool HasOnly(KnownSubstance known, string allergen) => known.Names.Any(n => PlainText.Of(n) == PlainText.Of(allergen));

    private KnownSubstance? Known(string cas) => list.KnownAs(new SubstanceIdentity("", CasNumber.Parse(cas).OrNull(), null));

    private IEnumerable<string> Owners(EcNumber ec)
    {
        var alone = new SubstanceIdentity("", null, ec);
        return list
            .Known.Where(k => k.Ec == ec.Text)
            .Select(k => k.Cas)
            .Concat(list.HistoriesOf(alone).SelectMany(h => h.Versions).Select(v => v.Member(alone)?.Cas).OfType<string>())
            .Distinct();
    }

    private IEnumerable<string> EcNumbersOf(SubstanceIdentity alone) =>
        list.HistoriesOf(alone)
            .SelectMany(h => h.Versions)
            .Select(v => v.Member(alone)?.Ec)
            .Append(list.KnownAs(alone)?.Ec)
            .OfType<string>();
}
