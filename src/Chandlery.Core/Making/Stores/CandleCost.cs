using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making.Stores;

/// <summary>What one candle costs, and the price that follows from the maker's own rates.</summary>
/// <param name="Candle">The candle.</param>
/// <param name="Parts">What it is made of, packed in, and the work.</param>
/// <param name="Rates">The maker's rates; null when none are declared.</param>
public sealed record CandleCost(Candle Candle, IReadOnlyList<CostPart> Parts, Rates? Rates)
{
    private const double MinutesInHour = 60;

    /// <summary>True when the cost of every part is known.</summary>
    public bool IsWhole => Parts.All(p => p.Cost is not null);

    /// <summary>The sum of what is known: the cost where everything is, less than it where something is not.</summary>
    public Money Known => Parts.Aggregate(new Money(0), (sum, p) => sum + (p.Cost ?? new Money(0)));

    /// <summary>Price before tax; null when a part or the margin is not known.</summary>
    public Money? Price => IsWhole && Rates?.MarginPercent is { } margin ? new Money(Known.Amount * 100 / (decimal)(100 - margin)) : null;

    /// <summary>Price with tax; null when the price is not known.</summary>
    public Money? PriceWithTax => Price is { } price ? price * (1 + ((Rates?.TaxPercent ?? 0) / 100)) : null;

    /// <summary>The cost of a candle.</summary>
    /// <param name="candle">The candle.</param>
    /// <param name="recipe">Its shares.</param>
    /// <param name="catalogue">Vessels and the maker.</param>
    /// <param name="prices">What materials cost.</param>
    /// <param name="wastePercent">What of wax, oil and extras stays in the jug, percent.</param>
    public static CandleCost Of(Candle candle, Recipe recipe, Catalogue catalogue, Prices prices, double wastePercent)
    {
        Rates? rates = catalogue.OfKind<Maker>().FirstOrDefault()?.Rates;
        List<CostPart> parts = [];
        foreach (Need need in Needs.OfCandle(candle, recipe, catalogue))
        {
            double amount = need.Amount!.Value * (need.Material.IsCounted ? 1 : 1 + (wastePercent / 100));
            Lot? lot = prices.LotOf(need.Material);
            string unit = need.Material.IsCounted && amount == 1 ? "piece" : need.Material.Unit;
            parts.Add(
                new CostPart(
                    need.Name,
                    $"{Figures.Rounded(amount, 2)} {unit}",
                    prices.Each(need.Material) * amount,
                    lot is null ? "no lot says what it cost" : $"lot {lot.Id}"
                )
            );
        }

        parts.Add(Work(candle, rates));
        return new CandleCost(candle, parts, rates);
    }

    private static CostPart Work(Candle candle, Rates? rates) =>
        candle.WorkMinutes is not { } minutes
            ? new CostPart("work", "?", null, "the candle does not say how many minutes it takes: add 'minutes'")
        : rates?.PerHour is not { } hour
            ? new CostPart("work", $"{Figures.Plain(minutes)} min", null, "the maker does not say what an hour costs: add 'rates'")
        : new CostPart("work", $"{Figures.Plain(minutes)} min", hour * (minutes / MinutesInHour), $"{hour} an hour");
}
