using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.SafetyFiles.TechnicalFiles;

/// <summary>What has changed on a candle since an earlier version of its technical file: what is declared, and what the law makes of it.</summary>
public static class FileChanges
{
    /// <summary>The changes, what is declared first.</summary>
    /// <param name="then">The candle as it was, under the law of then.</param>
    /// <param name="now">The candle as it is, under the same edition.</param>
    public static IReadOnlyList<StateChange> Between(Assessment then, Assessment now) =>
        [.. StateComparison.Compare([Entry(then)], [Entry(now)]).SelectMany(c => c.Changes)];

    private static CatalogueEntry<CandleState> Entry(Assessment a)
    {
        CandleState state = CandleState.Of(a);
        Dictionary<string, IReadOnlyList<Fact>> all = new(Declared(a));
        foreach ((string subject, IReadOnlyList<Fact> facts) in state.Subjects)
        {
            all[subject] = facts;
        }

        return new CatalogueEntry<CandleState>(a.Id, a.Candle.Place, [state with { Subjects = all }], []);
    }

    private static Dictionary<string, IReadOnlyList<Fact>> Declared(Assessment a)
    {
        Candle candle = a.Candle;
        Recipe recipe = a.Composition.Recipe;
        return new()
        {
            ["name"] = Facts(candle.Name),
            ["maker"] = Facts(a.Roles.Maker.OnOneLine),
            ["place of sale"] = Facts([.. candle.SoldIn.Select(s => s.Code.Text)]),
            ["contents"] = Facts(
                candle.NetVolume is { } volume
                    ? $"{FigureFormat.English.Declared(volume.Value)} ml"
                    : $"{FigureFormat.English.Declared(candle.NetMass.Value)} g"
            ),
            ["use"] = Facts(candle.Use == CandleUse.Outdoor ? "outdoors" : "indoors"),
            ["vessel"] = Facts(candle.Vessel is null ? "none" : $"{a.Vessel.Name}, {a.Vessel.Material}, {a.Vessel.Brimful} to the brim"),
            ["wicks"] = Facts($"{candle.Wicks.Count} x {candle.Wicks.Kind ?? "kind not declared"}"),
            ["material"] =
            [
                .. recipe.Waxes.Select(w => new Fact($"{w.Wax.Name}, {FigureFormat.English.About(w.Share)}", w.Wax.Supplier)),
                .. recipe.Oils.Select(o => new Fact(
                    $"{o.Oil.Name}, {FigureFormat.English.About(o.Share)}",
                    $"{o.Oil.Document}, {IsoDay.Plain(o.Oil.Revised)}"
                )),
                .. recipe.Extras.Select(e => new Fact($"{e.Extra.Name}, {FigureFormat.English.About(e.Share)}", e.Extra.Supplier)),
            ],
            ["document"] = Facts([.. recipe.Oils.Select(o => $"{o.Oil.Name}: {o.Oil.Document}, {IsoDay.Plain(o.Oil.Revised)}")]),
            ["packaging"] = Facts([.. (candle.Packaging ?? []).Select(p => $"{p.Part}, {EnumName.Of(p.Material)}, {p.Weight}")]),
        };
    }

    private static IReadOnlyList<Fact> Facts(params IReadOnlyList<string> texts) => [.. texts.Select(t => new Fact(t, "declared"))];
}
