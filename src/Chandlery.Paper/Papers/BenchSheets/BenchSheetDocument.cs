using Chandlery.Core.Assessed;
using Chandlery.Core.Making;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.BenchSheets;

/// <summary>Prints the sheet that hangs at the bench while candles are made.</summary>
public static class BenchSheetDocument
{
    /// <summary>The sheet; null when template or data have problems.</summary>
    public static PaperDocument? Make(Assessment a, PouringPlan plan, PaperShop shop, Problems problems) =>
        shop.Read("bench-sheet.sbn", Model(a, plan), problems) is { } document
            ? ManyPages.Lay(document, shop, (_, _) => [], (page, count) => $"{a.Candle.Name}, {a.Id}: page {page} of {count}")
            : null;

    private static Dictionary<string, object?> Model(Assessment a, PouringPlan plan) =>
        new()
        {
            ["name"] = a.Candle.Name,
            ["count"] = $"{plan.Count}",
            ["net"] = a.Candle.NetMass.ToString(),
            ["total"] = Weighed(plan.Total),
            ["waste"] = Figures.Plain(plan.WastePercent),
            ["stops"] = a.Findings.Where(f => f.Gravity == Gravity.Stop).Select(f => (object?)f.What).ToList(),
            ["first"] = plan.FirstPour.Select(Row).ToList(),
            ["second"] = plan.TopUp.Select(Row).ToList(),
            ["first_each"] = Weighed(plan.FirstPourEach),
            ["top_up_each"] = plan.TopUpEach.Value > 0 ? Weighed(plan.TopUpEach) : "",
            ["load_wax"] = a.Composition.Recipe.MeltLoadOfWax.ToString(),
            ["load_melt"] = a.Composition.Recipe.MeltLoadOfCandle.ToString(),
            ["load_candle"] = a.Composition.Recipe.Load.ToString(),
            ["temperatures"] = plan
                .Temperatures.Select(t =>
                    (object?)
                        new Dictionary<string, object?>
                        {
                            ["step"] = t.Step,
                            ["at"] = t.Temperature is { } c ? $"{Figures.Plain(c.Value)} °C" : "not declared",
                            ["note"] = t.Note,
                        }
                )
                .ToList(),
            ["vessel"] = $"{a.Vessel.Name} ({a.Vessel.Material}), {a.Vessel.Brimful} to the brim",
            ["fill"] = plan.Fill.Note,
            ["shrink"] = plan.Fill.ShrinkPercent is { } shrink ? $"{shrink:0.0}" : "",
            ["net_for_room"] = plan.Fill.NetForRoom is { } net ? Weighed(net) : "",
            ["wick_count"] = $"{plan.Wicks.Count}",
            ["wick_kind"] = a.Candle.Wicks.Kind ?? "",
            ["wick_note"] = plan.Wicks.Note,
            ["trim"] = a.Candle.Wicks.TrimTo.ToString(),
        };

    private static object? Row(Portion p) =>
        new Dictionary<string, object?>
        {
            ["name"] = p.Name,
            ["kind"] = p.Kind,
            ["mass"] = Weighed(p.Mass),
        };

    // A kitchen scale shows a gram, a pocket scale a tenth: small amounts keep their tenths.
    private static string Weighed(Grams mass) => mass.Value >= 1000 ? $"{mass.Value:0} g" : $"{mass.Value:0.0} g";
}
