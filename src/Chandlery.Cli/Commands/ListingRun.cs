using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles.Listings;

namespace Chandlery.Cli.Commands;

/// <summary>Makes listings of candles and says of each that is refused why.</summary>
internal sealed class ListingRun(Session session, Lawbook law, ListingUse use, string? onlyLanguage)
{
    /// <summary>Whether one at least was refused.</summary>
    public bool Refused { get; private set; }

    /// <summary>The listings of a candle, a language each.</summary>
    public IEnumerable<ShopListing> Listings(Assessment a)
    {
        foreach (Finding stop in a.Findings.Where(f => f.Gravity == Gravity.Stop))
        {
            Refuse(a, $"something stops the sale: {stop.What}{(stop.Clause.IsNone ? "" : $" ({stop.Clause})")}");
        }

        List<Place> without = [.. ListingMaker.WithoutRules(a, law.Safety)];
        if (without.Count > 0)
        {
            Refuse(a, $"no rule on listings is known for {string.Join(", ", without.Select(p => p.Name))}.");
        }

        if (a.StopsSale || without.Count > 0)
        {
            yield break;
        }

        List<Language> languages = [.. a.Languages.Where(l => onlyLanguage is null || l.Code == onlyLanguage)];
        if (languages.Count == 0)
        {
            Refuse(a, $"'{onlyLanguage}' is no language of its label there: {string.Join(", ", a.Languages.Select(l => l.Code))}.");
        }

        foreach (Language language in languages)
        {
            if (law.Safety.Words.Find(language.Code) is { } words)
            {
                yield return ListingMaker.Make(a, language, words, law, use);
            }
            else
            {
                Refuse(
                    a,
                    $"there are no words for listings in {language.Name} yet, and one in another language would not do. Languages so far: {string.Join(", ", law.Safety.Words.Codes)}."
                );
            }
        }
    }

    private void Refuse(Assessment a, string why)
    {
        Refused = true;
        session.Complain($"{a.Id} ({a.Edition.Id}): no listing: {why}");
    }
}
