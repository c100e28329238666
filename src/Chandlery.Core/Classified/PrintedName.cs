using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Yaml;

namespace Chandlery.Core.Classified;

/// <summary>
/// The name by which a substance is printed: one that the table of harmonised classes gives it (CLP Art. 18(2)(a)), in the usual
/// spelling of the trade where that is one of them, else its shortest. Without an entry: the cosmetics law's name of an allergen
/// that is one substance, or the oil or extract of one plant, else the sheet's where the trade knows it by that, else the trade's.
/// </summary>
internal static class PrintedName
{
    public static string Of(SubstanceIdentity identity, Listing listing) => WithOrigin(identity, listing).Name;

    public static (string Name, NameOrigin Origin) WithOrigin(SubstanceIdentity identity, Listing listing)
    {
        // The name of an extract is that of all its numbers; otherwise several that go by a name have no other name in common.
        if (listing.Meant.Count > 1)
        {
            return listing is { Entries.Count: 0, ExtractName: { } common } ? (common, NameOrigin.CosmeticsLaw)
                : listing.Entries.SelectMany(listing.NamesIn).Any(n => PlainText.Of(n) == identity.PlainName)
                    ? (identity.Name, NameOrigin.Table)
                : (identity.Name, NameOrigin.Trade);
        }

        List<string> law = [.. listing.Entries.SelectMany(listing.NamesIn).Where(n => n[0] != '(')];
        List<string> usual = [.. (listing.Known?.Names ?? []).Concat(listing.Known?.AllergenRows ?? [])];
        if (law.Count > 0)
        {
            HashSet<string> plain = [.. law.Select(PlainText.Of)];
            return (usual.Find(u => plain.Contains(PlainText.Of(u))) ?? law.MinBy(n => n.Length)!, NameOrigin.Table);
        }

        return listing switch
        {
            { ExtractName: { } extract } => (extract, NameOrigin.CosmeticsLaw),
            { Known: null } => (identity.Name, NameOrigin.Trade),
            { Known: { AllergenName: { } allergen, SharesAllergenName: false } } => (allergen, NameOrigin.CosmeticsLaw),
            _ when usual.Exists(u => PlainText.Of(u) == identity.PlainName) => (identity.Name, OriginOf(identity.Name, listing.Known)),
            { Known: { } known } => (known.Names[0], OriginOf(known.Names[0], known)),
        };
    }

    private static NameOrigin OriginOf(string name, KnownSubstance known) =>
        known.AllergenRows.Any(r => PlainText.Of(r) == PlainText.Of(name)) ? NameOrigin.CosmeticsLaw : NameOrigin.Trade;
}
