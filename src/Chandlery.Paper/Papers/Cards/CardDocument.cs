using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Markup;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.Cards;

/// <summary>Makes burn-safety cards, a page for each language of the label.</summary>
public static class CardDocument
{
    private const double LineSpacing = 1.25;
    private const double StepMm = 0.02;
    private static readonly string[] WhileBurning = ["firstBurn", "longestBurn", "poolClear", "noMoving", "hotVessel"];

    /// <summary>The card, or null when template or data have problems, or when the text does not fit.</summary>
    /// <param name="assessment">The candle.</param>
    /// <param name="kind">Which card.</param>
    /// <param name="shop">Templates and drawings.</param>
    /// <param name="advice">Burn-safety figures.</param>
    /// <param name="problems">Collects what is wrong.</param>
    public static PaperDocument? Make(Assessment assessment, CardKind kind, PaperShop shop, BurnAdvice advice, Problems problems)
    {
        string template = kind switch
        {
            CardKind.Buyer => "burn-card.sbn",
            CardKind.Pocket => "burn-card-pocket.sbn",
            _ => "shop-card.sbn",
        };
        var pages = new List<Scene>();
        string title = "";
        foreach (Language language in assessment.Languages)
        {
            MarkupDocument? document = shop.Read(template, Model(assessment, language, advice), problems);
            if (document is null || Fit(document, template, shop, problems) is not { } page)
            {
                return null;
            }

            title = title.Length == 0 ? document.Title : title;
            pages.Add(page);
        }

        return new PaperDocument(title, assessment.Languages[0].Code, pages);
    }

    private static Scene? Fit(MarkupDocument document, string template, PaperShop shop, Problems problems)
    {
        double bottom = document.HeightMm - document.MarginMm;
        for (double xHeight = document.XHeightMm; xHeight >= document.SmallestXHeightMm; xHeight -= StepMm)
        {
            var region = Region.Rectangle(document.MarginMm, document.MarginMm, document.WidthMm - document.MarginMm, bottom);
            LayoutResult layout = FlowLayout.Lay(document.Blocks, region, new LayoutSizes(xHeight, LineSpacing, 16), shop.Symbols);
            if (layout.EndMm <= bottom && layout.OverflowMm <= 0)
            {
                return new Scene(document.WidthMm, document.HeightMm, layout.Items, layout.Marks);
            }
        }

        problems.Add(
            new TextPlace("templates/" + template, 0, 0),
            $"The text does not fit a card of {document.WidthMm} x {document.HeightMm} mm at an x-height of {document.SmallestXHeightMm} mm.",
            "Make the card larger or say less in the template."
        );
        return null;
    }

    private static Dictionary<string, object?> Model(Assessment a, Language language, BurnAdvice advice)
    {
        Candle candle = a.Candle;
        bool outdoor = candle.Use == CandleUse.Outdoor;
        IReadOnlyDictionary<string, string> figures = BurnFigures.Of(candle, a.Vessel, advice);
        List<object?> Messages(params IEnumerable<string> keys) =>
            [
                .. keys.Select(key =>
                    (object?)
                        new Dictionary<string, object?>
                        {
                            ["symbol"] = SymbolOf(key),
                            ["text"] = BurnFigures.Fill(language.Safety[key], figures),
                        }
                ),
            ];
        bool consumer = !a.Edition.Label.ShowsHazards;
        string trim = candle.Wicks.Count > 1 ? "trimWicks" : "trimWick";
        return new Dictionary<string, object?>
        {
            ["title"] = language.Words["cardTitle"],
            ["lang"] = language.Code,
            ["name"] = candle.Name,
            ["maker"] = a.Maker.Name,
            ["address"] = string.Join(", ", a.Maker.AddressLines),
            ["telephone"] = a.Maker.Telephone,
            ["contact"] = a.Maker.Email ?? a.Maker.Web,
            ["first"] = Messages(LabelModel.CompulsoryMessages),
            ["before_heading"] = language.Words["beforeLighting"],
            ["before"] = Messages([outdoor ? "outdoorOnly" : "draught", "surface", trim]),
            ["during_heading"] = language.Words["whileBurning"],
            ["during"] = Messages(candle.Wicks.Count > 1 ? [.. WhileBurning, "allWicks"] : WhileBurning),
            ["stop_heading"] = language.Words["whenToStop"],
            ["stop"] = Messages(["snuff", "noLiquid", "relight", "stop"]),
            ["trouble_heading"] = language.Words["ifSomethingHappens"],
            ["trouble"] = Messages(["tallFlame", "fire"]),
            ["caution"] = language.Caution,
            ["warning_word"] = consumer ? language.Words["usWarning"] : "",
            ["warnings"] = consumer ? LabelModel.AstmMessages.Select(k => (object?)language.Words[k]).ToList() : [],
            ["shop_title"] = language.Words["shopTitle"],
            ["pocket"] = Messages([outdoor ? "outdoorOnly" : "draught", trim, "snuff"]),
            ["tell_heading"] = language.Words["tellCustomers"],
            ["tell"] = Messages([.. LabelModel.CompulsoryMessages, trim, "longestBurn", "snuff", "stop"]),
            ["content_heading"] = language.Words["whatIsInIt"],
            ["content"] = Content(a, language),
            ["store_heading"] = language.Words["howToStore"],
            ["store"] = language.Words["storeAdvice"],
            ["ask_heading"] = language.Words["whomToAsk"],
            ["emergency"] = a.Maker.EmergencyTelephone is { } number ? $"{language.Words["emergencyTelephone"]}: {number}" : "",
        };
    }

    // Sensitisers with their share, and what the label says about hazards.
    private static List<object?> Content(Assessment a, Language language)
    {
        var lines = new List<object?>();
        if (a.Classification.Sensitisers.Count == 0)
        {
            lines.Add(language.Words["noSensitisers"]);
        }
        else
        {
            IEnumerable<string> names = a
                .Classification.Sensitisers.OrderByDescending(s => s.Substance.Ingredient.WholeHigh.Value)
                .Select(s => $"{s.Substance.Name} (≤ {s.Substance.Ingredient.WholeHigh})");
            lines.Add($"{language.Words["contains"]}: {string.Join(", ", names)}.");
        }

        if (a.Label.Hazard.Count > 0)
        {
            string word = a.Label.SignalWord is { } w ? language.Words[w.Code == "Danger" ? "danger" : "warning"] + ". " : "";
            lines.Add(word + string.Join(' ', a.Label.Hazard.Select(h => StatementText.Printed(language, h.Code, a.Label))));
        }

        return lines;
    }

    private static string SymbolOf(string key) =>
        key switch
        {
            "trimWicks" => "trimWick",
            "firstBurn" or "longestBurn" or "relight" or "allWicks" or "tallFlame" or "fire" => "",
            _ => key,
        };
}
