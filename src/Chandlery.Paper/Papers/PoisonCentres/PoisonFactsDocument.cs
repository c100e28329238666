using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Notified;
using Chandlery.Core.Quantities;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.PoisonCentres;

/// <summary>Makes the page of facts that a notification to the poison centres asks for .</summary>
public static class PoisonFactsDocument
{
    private const string Template = "poison-facts.sbn";

    /// <summary>The page, or null when template or data have problems, or the place knows no such notification.</summary>
    public static PaperDocument? Make(Assessment a, PaperShop shop, Problems problems)
    {
        MarkupDocument? document = a.Edition.PoisonCentres is { } rules ? shop.Read(Template, Model(a, rules), problems) : null;
        if (document is null)
        {
            return null;
        }

        return ManyPages.Lay(
            document,
            shop,
            (_, _) => [],
            (page, count) => $"{a.Candle.Name}, {a.Id}, as of {a.AsOf:yyyy-MM-dd}: page {page} of {count}"
        );
    }

    private static Dictionary<string, object?> Model(Assessment a, PoisonCentreRules rules) =>
        new()
        {
            ["name"] = a.Candle.Name,
            ["ufi"] = a.Ufi ?? "none needed or none made yet",
            ["maker"] = a.Maker.Name,
            ["address"] = string.Join(", ", a.Maker.AddressLines),
            ["telephone"] = a.Maker.Telephone,
            ["contact"] = a.Maker.Email ?? a.Maker.Web,
            ["use"] =
                a.Candle.Use == CandleUse.Outdoor
                    ? "scented candle for outdoors, consumer use"
                    : "scented candle for indoors, consumer use",
            ["package"] = $"{a.Vessel.Name} ({a.Vessel.Material}), {a.Vessel.Brimful}; {Figures.Plain(a.Candle.NetMass.Value)} g",
            ["places"] = string.Join(", ", a.Places.Select(p => p.Name)),
            ["classes"] =
                a.Classification.Classes.Count == 0
                    ? "not classified"
                    : string.Join(", ", a.Classification.Classes.Select(c => $"{c.Category.Code} ({c.Statement})")),
            ["label"] = string.Join(", ", a.Label.All.Select(c => c.Text)),
            ["ingredients"] = PoisonFacts
                .Ingredients(rules, a.Substances)
                .Select(i =>
                    (object?)
                        new Dictionary<string, object?>
                        {
                            ["name"] = i.Name,
                            ["cas"] = i.Cas ?? "-",
                            ["ec"] = i.Ec ?? "-",
                            ["band"] = i.Band,
                            ["hazards"] = i.Hazards,
                        }
                )
                .ToList(),
            ["unknown"] =
                a.Composition.UnknownHigh.Value > 0.005
                    ? $"Up to {a.Composition.UnknownHigh} of the candle is not declared by its suppliers."
                    : "",
            ["clause"] = rules.Clause.Text,
        };
}
