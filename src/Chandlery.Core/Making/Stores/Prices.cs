using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making.Stores;

/// <summary>What materials cost, by the newest lot that says so.</summary>
/// <param name="catalogue">The lots.</param>
/// <param name="day">Lots bought after it do not count.</param>
public sealed class Prices(Catalogue catalogue, DateOnly day)
{
    /// <summary>The lot by which a material is reckoned; null when none says what was paid and how much it was.</summary>
    public Lot? LotOf(Material material) =>
        catalogue
            .OfKind<Lot>()
            .Where(l => l.Content == material.Content && l.Of.Id == material.Id && l.Bought <= day && Each(l) is not null)
            .OrderByDescending(l => l.Bought)
            .ThenBy(l => l.Id, StringComparer.Ordinal)
            .FirstOrDefault();

    /// <summary>What a gram or a piece costs; null when not known.</summary>
    public Money? Each(Material material) => LotOf(material) is { } lot ? Each(lot) : null;

    /// <summary>What a gram of each oil costs, by its file name, as far as it is known.</summary>
    public IReadOnlyDictionary<string, double> OilsPerGram() =>
        catalogue
            .OfKind<Oil>()
            .Select(o => (o.Id, Each: Each(new Material(LotContent.Oil, o.Id))))
            .Where(o => o.Each is not null)
            .ToDictionary(o => o.Id, o => (double)o.Each!.Value.Amount);

    private static Money? Each(Lot lot)
    {
        double? amount = new Material(lot.Content, lot.Of.Id).IsCounted ? lot.Pieces : lot.Weight?.Value;
        return lot.Paid is { } paid && amount is > 0 ? new Money(paid.Amount / (decimal)amount.Value) : null;
    }
}
