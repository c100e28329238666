using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.SafetyFiles.Listings;

/// <summary>What a shop or an advertisement may be given for a candle: its listings, a language each, or why there is none.</summary>
/// <param name="Made">The listings.</param>
/// <param name="Refused">Why one that was asked for is not there.</param>
public sealed record OfferedListings(IReadOnlyList<ShopListing> Made, IReadOnlyList<string> Refused)
{
    /// <summary>The listings of a candle.</summary>
    /// <param name="a">The candle.</param>
    /// <param name="law">Law and words.</param>
    /// <param name="use">Shop or advertisement.</param>
    /// <param name="onlyLanguage">Code of one language of its label; null for all of them.</param>
    public static OfferedListings Of(Assessment a, Lawbook law, ListingUse use, string? onlyLanguage)
    {
        List<string> refused =
        [
            .. a
                .Findings.Where(f => f.Gravity == Gravity.Stop)
                .Select(f => $"something stops the sale: {f.What}{(f.Clause.IsNone ? "" : $" ({f.Clause})")}"),
        ];
        List<Place> without = [.. ListingMaker.WithoutRules(a, law.Safety)];
        if (without.Count > 0)
        {
            refused.Add($"no rule on listings is known for {string.Join(", ", without.Select(p => p.Name))}.");
        }

        if (a.StopsSale || without.Count > 0)
        {
            return new OfferedListings([], refused);
        }

        List<Language> languages = [.. a.Languages.Where(l => onlyLanguage is null || l.Code == onlyLanguage)];
        if (languages.Count == 0)
        {
            refused.Add($"'{onlyLanguage}' is no language of its label there: {string.Join(", ", a.Languages.Select(l => l.Code))}.");
        }

        var made = new List<ShopListing>();
        foreach (Language language in languages)
        {
            if (law.Safety.Words.Find(language.Code) is { } words)
            {
                made.Add(ListingMaker.Make(a, language, words, law, use));
            }
            else
            {
                refused.Add(
                    $"there are no words for listings in {language.Name} yet, and one in another language would not do. Languages so far: {string.Join(", ", law.Safety.Words.Codes)}."
                );
            }
        }

        return new OfferedListings(made, refused);
    }
}
