using Chandlery.Core.Declared;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.Recalls;

/// <summary>
/// Finds whom a recall reaches: what is known for sure, and what cannot be ruled out because nobody noted it. A gap in the notes
/// never makes a batch harmless.
/// </summary>
/// <param name="catalogue">The maker's declarations.</param>
public sealed class RecallFinder(Catalogue catalogue)
{
    private readonly ILookup<string, Dispatch> dispatches = catalogue.OfKind<Dispatch>().OrderBy(d => d.On).ToLookup(d => d.Batch.Id);

    /// <summary>Whom it reaches; null when nothing of that name is declared.</summary>
    public RecallResult? Find(RecallQuery query)
    {
        (IReadOnlyList<(Batch Batch, string Why, bool IsCertain)> Found, Func<Candle, bool> Concerns)? reached = query.By switch
        {
            RecallBy.Batch => ByBatch(query.Text),
            RecallBy.Lot => ByLot(query.Text),
            RecallBy.Oil => ByOil(query.Text),
            _ => BySubstance(query.Text),
        };
        if (reached is not { } found)
        {
            return null;
        }

        List<AffectedBatch> batches =
        [
            .. found
                .Found.OrderByDescending(f => f.IsCertain)
                .ThenBy(f => f.Batch.Poured)
                .ThenBy(f => f.Batch.Id, StringComparer.Ordinal)
                .Select(f => (f, Candle: CandleOf(f.Batch)))
                .Where(f => f.Candle is not null)
                .Select(f => new AffectedBatch(f.f.Batch, f.Candle!, f.f.Why, f.f.IsCertain, [.. dispatches[f.f.Batch.Id]])),
        ];
        return new RecallResult(query, batches, [.. Unknown(batches, found.Concerns)]);
    }

    private (IReadOnlyList<(Batch, string, bool)>, Func<Candle, bool>)? ByBatch(string text)
    {
        List<(Batch, string, bool)> found =
        [
            .. catalogue.OfKind<Batch>().Where(b => b.Id == text || b.Code == text).Select(b => (b, $"it is batch {b.Code}", true)),
        ];
        return found.Count > 0 ? (found, _ => false) : null;
    }

    private (IReadOnlyList<(Batch, string, bool)>, Func<Candle, bool>)? ByLot(string text)
    {
        List<Lot> lots = [.. catalogue.OfKind<Lot>().Where(l => l.Id == text || l.Code == text)];
        if (lots.Count == 0)
        {
            return null;
        }

        var found = new List<(Batch, string, bool)>();
        foreach (Batch batch in catalogue.OfKind<Batch>())
        {
            List<Lot> named = [.. batch.Lots.Select(r => catalogue.OfKind<Lot>().FirstOrDefault(l => l.Id == r.Id)).OfType<Lot>()];
            if (lots.Find(named.Contains) is { } used)
            {
                found.Add((batch, $"lot {used.Code} went into it", true));
            }
            else if (
                lots.Find(l =>
                    l.Bought <= batch.Poured && Uses(batch, l) && !named.Exists(n => n.Content == l.Content && n.Of.Id == l.Of.Id)
                ) is
                { } possible
            )
            {
                found.Add((batch, $"it is not noted which lot of {possible.CalledIn(catalogue)} went into it", false));
            }
        }

        return (found, c => lots.Exists(l => Uses(c, l)));
    }

    private (IReadOnlyList<(Batch, string, bool)>, Func<Candle, bool>)? ByOil(string text)
    {
        List<Oil> oils = [.. catalogue.OfKind<Oil>().Where(o => o.Id == text || o.Name.Contains(text, StringComparison.OrdinalIgnoreCase))];
        List<(Batch, string, bool)> found =
        [
            .. catalogue
                .OfKind<Batch>()
                .Select(b => (Batch: b, Oil: oils.Find(o => b.Oils.Any(p => p.Oil.Id == o.Id))))
                .Where(f => f.Oil is not null)
                .Select(f => (f.Batch, $"{f.Oil!.Name} is in it", true)),
        ];
        return oils.Count == 0 ? null : (found, c => c.Oils.Any(p => oils.Exists(o => o.Id == p.Oil.Id)));
    }

    private (IReadOnlyList<(Batch, string, bool)>, Func<Candle, bool>)? BySubstance(string text)
    {
        bool Holds(IEnumerable<Ingredient> lines) =>
            lines
                .SelectMany(l => l.Constituents.Prepend(l))
                .Any(i => i.Identity.Cas?.Text == text || i.Identity.Name.Contains(text, StringComparison.OrdinalIgnoreCase));
        HashSet<string> oils = [.. catalogue.OfKind<Oil>().Where(o => Holds(o.Ingredients)).Select(o => o.Id)];
        HashSet<string> extras = [.. catalogue.OfKind<Extra>().Where(e => Holds(e.Ingredients)).Select(e => e.Id)];
        HashSet<string> waxes = [.. catalogue.OfKind<Wax>().Where(w => Holds(w.Ingredients)).Select(w => w.Id)];
        waxes.UnionWith([.. catalogue.OfKind<Wax>().Where(w => w.Blend.Any(p => waxes.Contains(p.Wax.Id))).Select(w => w.Id)]);
        if (oils.Count + extras.Count + waxes.Count == 0)
        {
            return null;
        }

        List<(Batch, string, bool)> found =
        [
            .. catalogue
                .OfKind<Batch>()
                .Where(b =>
                    b.Oils.Any(p => oils.Contains(p.Oil.Id))
                    || b.Extras.Any(p => extras.Contains(p.Extra.Id))
                    || (CandleOf(b) is { } candle && waxes.Contains(candle.Wax.Id))
                )
                .Select(b => (b, $"{text} is in it", true)),
        ];
        return (
            found,
            c => c.Oils.Any(p => oils.Contains(p.Oil.Id)) || c.Extras.Any(p => extras.Contains(p.Extra.Id)) || waxes.Contains(c.Wax.Id)
        );
    }

    private bool Uses(Batch batch, Lot lot)
    {
        return lot.Content switch
        {
            LotContent.Oil => batch.Oils.Any(p => p.Oil.Id == lot.Of.Id),
            LotContent.Extra => batch.Extras.Any(p => p.Extra.Id == lot.Of.Id),
            _ => CandleOf(batch) is { } candle && Uses(candle, lot),
        };
    }

    private bool Uses(Candle candle, Lot lot) =>
        lot.Content switch
        {
            LotContent.Oil => candle.Oils.Any(p => p.Oil.Id == lot.Of.Id),
            LotContent.Extra => candle.Extras.Any(p => p.Extra.Id == lot.Of.Id),
            LotContent.Wax => candle.Wax.Id == lot.Of.Id || IsBlendOf(candle, lot.Of.Id),
            LotContent.Vessel => candle.Vessel?.Id == lot.Of.Id,
            LotContent.Packaging => candle.Packaging?.Any(p => p.Part == lot.Of.Id) ?? true,
            _ => candle.Wicks.Count > 0 && (candle.Wicks.Kind is null || candle.Wicks.Kind == lot.Of.Id),
        };

    private bool IsBlendOf(Candle candle, string wax) =>
        catalogue.OfKind<Wax>().Any(w => w.Id == candle.Wax.Id && w.Blend.Any(p => p.Wax.Id == wax));

    private Candle? CandleOf(Batch batch) => catalogue.OfKind<Candle>().FirstOrDefault(c => c.Id == batch.Candle.Id);

    private IEnumerable<string> Unknown(List<AffectedBatch> batches, Func<Candle, bool> concerns)
    {
        foreach (AffectedBatch b in batches)
        {
            if (b.Batch.Made is null)
            {
                yield return $"Batch {b.Batch.Code}: it is not noted how many were made, so nobody knows how many are left or where they are.";
            }
            else if (b.Left < 0)
            {
                yield return $"Batch {b.Batch.Code}: {b.Dispatched} went out of {b.Batch.Made} made: one of the figures is wrong.";
            }

            foreach (Dispatch forgotten in b.Dispatches.Where(d => d.Receiver is null))
            {
                yield return $"Batch {b.Batch.Code}: {forgotten.Pieces} went out on {IsoDay.Plain(forgotten.On)} ({forgotten.Country}) to somebody whose name was taken out on {IsoDay.Plain(forgotten.Forgotten!.Value)}.";
            }
        }

        foreach (WrongFile wrong in catalogue.Wrong)
        {
            yield return $"{wrong.File} has problems and was left out: what it says is not known.";
        }

        HashSet<string> poured = [.. catalogue.OfKind<Batch>().Select(b => b.Candle.Id)];
        foreach (Candle candle in catalogue.OfKind<Candle>().Where(c => !poured.Contains(c.Id) && concerns(c)))
        {
            yield return $"{candle.Name}: no batch is declared, so what went out of it is not found.";
        }
    }
}
