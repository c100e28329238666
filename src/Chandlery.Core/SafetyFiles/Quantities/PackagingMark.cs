using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;

namespace Chandlery.Core.SafetyFiles.Quantities;

/// <summary>A mark or register that a country wants for packaging.</summary>
/// <param name="Country">Country code.</param>
/// <param name="Row">What it wants; null where no rule is known for it.</param>
public sealed record PackagingMark(string Country, MarkRow? Row)
{
    /// <summary>What the countries want where candles are sold or went, in force or to come.</summary>
    public static IReadOnlyList<PackagingMark> Of(Catalogue catalogue, Lawbook lawbook, DateOnly day) =>
        [
            .. catalogue
                .OfKind<Candle>()
                .SelectMany(c => c.SoldIn.Select(s => lawbook.FindPlace(s.Code)?.Code.Text ?? s.Code.Text))
                .Concat(catalogue.OfKind<Dispatch>().Select(d => d.Country))
                .Distinct()
                .Order(StringComparer.Ordinal)
                .SelectMany(country => Of(country, lawbook.Safety, day)),
        ];

    private static IEnumerable<PackagingMark> Of(string country, ProductSafetyLaw law, DateOnly day) =>
        law.For(law.Packagings, country) is { } rules
            ? rules
                .Marks.Where(m => m.SoldIn.Count == 0 || m.SoldIn.Contains(country))
                .Where(m => m.InForce.Until is not { } until || day <= until)
                .Select(m => new PackagingMark(country, m))
            : [new PackagingMark(country, null)];
}
