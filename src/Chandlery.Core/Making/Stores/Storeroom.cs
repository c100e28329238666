using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Making.Stores;

/// <summary>What is in store: lots in, batches out. It keeps no books; it says what is there and what is not known.</summary>
public sealed class Storeroom
{
    // Common practice, no source: early enough to order or to use it up.
    private const int SoonDays = 60;

    private Storeroom(IReadOnlyList<StoreLine> lines, IReadOnlyList<CanMake> enoughFor)
    {
        Lines = lines;
        EnoughFor = enoughFor;
    }

    /// <summary>The materials, by kind and name.</summary>
    public IReadOnlyList<StoreLine> Lines { get; }

    /// <summary>How many of each candle could be made of what is left.</summary>
    public IReadOnlyList<CanMake> EnoughFor { get; }

    /// <summary>The store on a day.</summary>
    /// <param name="catalogue">Lots, batches, candles.</param>
    /// <param name="day">The day; what was bought or poured after it does not count.</param>
    /// <param name="problems">Collects what is missing.</param>
    public static Storeroom On(Catalogue catalogue, DateOnly day, Problems problems)
    {
        var stock = new Dictionary<Material, StoreAccount>();
        foreach (
            Lot lot in catalogue.OfKind<Lot>().Where(l => l.Bought <= day).OrderBy(l => l.Bought).ThenBy(l => l.Id, StringComparer.Ordinal)
        )
        {
            Of(stock, new Material(lot.Content, lot.Of.Id), lot.CalledIn(catalogue)).Add(lot);
        }

        foreach (
            Batch batch in catalogue
                .OfKind<Batch>()
                .Where(b => b.Poured <= day)
                .OrderBy(b => b.Poured)
                .ThenBy(b => b.Id, StringComparer.Ordinal)
        )
        {
            foreach (Need need in Needs.OfBatch(batch, catalogue, problems))
            {
                Of(stock, need.Material, need.Name).Take(batch, need.Amount);
            }
        }

        List<StoreLine> lines =
        [
            .. stock
                .Values.Select(a => a.Line(lot => KeepingOf(lot, day)))
                .OrderBy(l => l.Material.Content)
                .ThenBy(l => l.Name, StringComparer.Ordinal),
        ];
        Dictionary<Material, StoreLine> byMaterial = lines.ToDictionary(l => l.Material);
        List<CanMake> enough =
        [
            .. catalogue
                .OfKind<Candle>()
                .OrderBy(c => c.Id, StringComparer.Ordinal)
                .Select(c => RecipeMaker.FromPlan(c, catalogue, problems) is { } recipe ? Enough(c, recipe, catalogue, byMaterial) : null)
                .OfType<CanMake>(),
        ];
        return new Storeroom(lines, enough);
    }

    private static StoreAccount Of(Dictionary<Material, StoreAccount> stock, Material material, string name)
    {
        if (!stock.TryGetValue(material, out StoreAccount? account))
        {
            stock[material] = account = new StoreAccount(material, name);
        }

        return account;
    }

    private static CanMake Enough(Candle candle, Recipe recipe, Catalogue catalogue, Dictionary<Material, StoreLine> lines)
    {
        int? least = null;
        string scarce = "";
        foreach (Need need in Needs.OfCandle(candle, recipe, catalogue).Where(n => n.Amount > 0))
        {
            if (lines.GetValueOrDefault(need.Material) is not { Left: { } left })
            {
                return new CanMake(candle.Id, candle.Name, null, $"{need.Name}: not known how much is left");
            }

            int count = (int)Math.Max(0, Math.Floor((left / need.Amount!.Value) + MassPercent.RelativeTolerance));
            if (least is null || count < least)
            {
                (least, scarce) = (count, need.Name);
            }
        }

        return new CanMake(candle.Id, candle.Name, least, scarce);
    }

    private static Keeping KeepingOf(Lot lot, DateOnly day) =>
        lot.BestBefore is not { } best ? Keeping.NotKnown
        : best < day ? Keeping.Past
        : best <= day.AddDays(SoonDays) ? Keeping.Soon
        : Keeping.Good;
}
