using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Yaml;

namespace Chandlery.Core.Classified;

/// <summary>
/// The name by which a substance is printed: one that the table of harmonised classes gives it (CLP Art. 18(2)(a)), in the usual
/// spelling of the trade where that is one of them, else its shortest. Without an entry: the cosmetics law's name of an allergen
/// that is one substance, else the sheet's where the trade knows it by that, else the trade's.
/// </summary>
internal static class PrintedName
{
    public static string Of(SubstanceIdentity identity, Listing listing)
    {
        // Several that go by a name without a number have no other name in common.
        if (listing.Meant.Count > 1)
        {
            return identity.Name;
        }

        List<string> law = [.. listing.Entries.SelectMany(listing.NamesIn).Where(n => n[0] != '(')];
        List<string> usual = [.. (listing.Known?.Names ?? []).Append(listing.Known?.AllergenName).OfType<string>()];
        if (law.Count > 0)
        {
            HashSet<string> plain = [.. law.Select(PlainText.Of)];
            return usual.Find(u => plain.Contains(PlainText.Of(u))) ?? law.MinBy(n => n.Length)!;
        }

        return listing.Known switch
        {
            null => identity.Name,
            { AllergenName: { } allergen, SharesAllergenName: false } => allergen,
            _ when usual.Exists(u => PlainText.Of(u) == identity.PlainName) => identity.Name,
            { } known => known.Names[0],
        };
    }
}
