using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Asked.Substances;

/// <summary>Tells what of a maker's own holds a substance. The candles are assessed once for all substances that are asked for.</summary>
public sealed class SubstanceHolders
{
    private readonly SubstanceList list;
    private readonly IReadOnlyList<Table> tables;
    private readonly IReadOnlyList<Assessment> candles;

    private SubstanceHolders(SubstanceList list, IReadOnlyList<Table> tables, IReadOnlyList<Assessment> candles)
    {
        this.list = list;
        this.tables = tables;
        this.candles = candles;
    }

    /// <summary>The oils, waxes, extras and candles of a catalogue.</summary>
    /// <param name="catalogue">What the maker declares.</param>
    /// <param name="lawbook">The law that candles are assessed by.</param>
    /// <param name="day">The day.</param>
    /// <param name="problems">Receives what is wrong with candles.</param>
    public static SubstanceHolders Of(Catalogue catalogue, Lawbook lawbook, DateOnly day, Problems problems)
    {
        var assessor = new Assessor(lawbook, catalogue, day);
        return new SubstanceHolders(
            lawbook.Substances,
            [
                .. catalogue.OfKind<Oil>().Select(o => new Table("oil", o.Id, o.Name, o.Ingredients)),
                .. catalogue.OfKind<Wax>().Select(w => new Table("wax", w.Id, w.Name, w.Ingredients)),
                .. catalogue.OfKind<Extra>().Select(e => new Table("extra", e.Id, e.Name, e.Ingredients)),
            ],
            [.. catalogue.OfKind<Candle>().SelectMany(c => assessor.Assess(c, null, problems)).DistinctBy(a => a.Id)]
        );
    }

    /// <summary>What holds a substance, as a line or as a constituent of one.</summary>
    /// <param name="identity">The substance.</param>
    /// <param name="law">The law by which sheets are compared with the harmonised classes; null where none is known for the day.</param>
    public IEnumerable<HolderAnswer> Holding(SubstanceIdentity identity, LawInForce? law)
    {
        foreach (Table table in tables)
        {
            foreach (Ingredient line in table.Lines.Concat(table.Lines.SelectMany(i => i.Constituents)))
            {
                if (IsSame(line.Identity, identity))
                {
                    yield return new HolderAnswer(
                        table.Kind,
                        table.Id,
                        table.Name,
                        line.Share.Printed,
                        law?.DifferencesOf(line, table.Name) ?? []
                    );
                }
            }
        }

        foreach (Assessment candle in candles)
        {
            foreach (ComposedIngredient held in candle.Composition.Ingredients.Where(i => IsSame(i.Identity, identity)))
            {
                yield return new HolderAnswer("candle", candle.Id, candle.Candle.Name, $"<= {Figures.Plain(held.WholeHigh.Value)} %", []);
            }
        }
    }

    // A line without a number holds what it is taken for by its name.
    private bool IsSame(SubstanceIdentity line, SubstanceIdentity asked) =>
        list.Meant(line).Any(m => (m.Cas is not null && m.Cas == asked.Cas) || (m.Ec is not null && m.Ec == asked.Ec));

    private sealed record Table(string Kind, string Id, string Name, IReadOnlyList<Ingredient> Lines);
}
