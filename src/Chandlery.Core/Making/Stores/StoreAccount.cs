using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;

namespace Chandlery.Core.Making.Stores;

/// <summary>What came in and went out of one material.</summary>
internal sealed class StoreAccount(Material material, string name)
{
    private readonly List<(Lot Lot, double? Left)> lots = [];
    private readonly List<string> notes = [];
    private double? went = 0;

    /// <summary>A lot came in.</summary>
    public void Add(Lot lot)
    {
        double? amount = material.IsCounted ? lot.Pieces : lot.Weight?.Value;
        lots.Add((lot, amount));
        if (amount is null)
        {
            notes.Add($"Lot {lot.Id} does not say how much it was: add '{(material.IsCounted ? "pieces" : "grams")}'.");
        }
    }

    /// <summary>A batch took some: out of the lots that it names, otherwise out of the oldest.</summary>
    public void Take(Batch batch, double? amount)
    {
        if (amount is not { } rest)
        {
            went = null;
            notes.Add($"Batch {batch.Code} does not say how many it made, so nobody knows how many it took: add 'made'.");
            return;
        }

        went += rest;
        List<int> order = [.. Enumerable.Range(0, lots.Count)];
        List<int> named = [.. order.Where(i => batch.Lots.Any(l => l.Id == lots[i].Lot.Id))];
        foreach (int i in named.Count > 0 ? named : order)
        {
            if (lots[i].Left is { } left)
            {
                double taken = Math.Min(rest, Math.Max(0, left));
                lots[i] = (lots[i].Lot, left - taken);
                rest -= taken;
            }
        }

        if (rest > MassPercent.RelativeTolerance * amount && lots.TrueForAll(l => l.Left is not null))
        {
            notes.Add(
                $"Batch {batch.Code} took {Figures.Plain(rest)} {material.Unit} more than {(named.Count > 0 ? "its lots held" : "was there")}: a lot is missing, or a figure is wrong."
            );
        }
    }

    /// <summary>The line of the store.</summary>
    public StoreLine Line(Func<Lot, Keeping> keeping)
    {
        List<LotLine> lines = [.. lots.Select(l => new LotLine(l.Lot, went is null ? null : l.Left, keeping(l.Lot)))];
        IEnumerable<string> days = lines
            .Where(l => l.Left is null or > 0 && l.Keeping is Keeping.Past or Keeping.Soon)
            .Select(l =>
                $"Lot {l.Lot.Id} is {(l.Keeping == Keeping.Past ? "past its" : "near its")} best-before day, {Yaml.IsoDay.Plain(l.Lot.BestBefore!.Value)}."
            );
        double? bought = lots.Exists(l => Amount(l.Lot) is null) ? null : lots.Sum(l => Amount(l.Lot)!.Value);
        IEnumerable<string> none = lots.Count == 0 ? ["No lot of it is declared."] : [];
        return new StoreLine(material, name, lots.Count == 0 ? null : bought, went, lines, [.. none, .. notes, .. days]);
    }

    private double? Amount(Lot lot) => material.IsCounted ? lot.Pieces : lot.Weight?.Value;
}
