using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Core.Notified;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.PoisonCentres;

/// <summary>The facts that a notification to the poison centres asks for ; due only with a UFI.</summary>
public sealed class PoisonFactsPaper() : PaperKind("poison-facts", "Facts for the poison centres")
{
    /// <inheritdoc/>
    public override bool HasPicturesInDossier => false;

    /// <inheritdoc/>
    protected override PaperOutcome Make(PaperRequest request, Problems problems)
    {
        Assessment a = request.Assessment;
        if (a.Ufi is not { } ufi || a.Edition.PoisonCentres is not { } rules)
        {
            return new MissingPaper("they are due with a UFI, and the candle has none.", IsDue: false, []);
        }

        PaperDocument? page = request.Shop.Read(View(a, ufi, rules), problems) is { } document
            ? ManyPages.Lay(
                document,
                request.Shop,
                (_, _) => [],
                (page, count) => $"{a.Candle.Name}, {a.Id}, as of {a.AsOf:yyyy-MM-dd}: page {page} of {count}"
            )
            : null;
        return Outcome(page, problems);
    }

    private static PoisonFactsView View(Assessment a, string ufi, PoisonCentreRules rules) =>
        new(
            a.Candle.Name,
            ufi,
            MakerView.Of(a.Maker),
            string.Join(", ", a.Places.Select(p => p.Name)),
            a.Candle.Use == CandleUse.Outdoor ? "scented candle for outdoors, consumer use" : "scented candle for indoors, consumer use",
            Colour(a),
            Toxicology(a),
            $"{a.Vessel.Name} ({a.Vessel.Material}), {a.Vessel.Brimful}; {FigureFormat.English.Declared(a.Candle.NetMass.Value)} g",
            a.Classification.Classes.Count == 0
                ? "not classified"
                : string.Join(", ", a.Classification.Classes.Select(c => $"{c.Category.Code} ({c.Statement})")),
            string.Join(", ", a.Label.All.Select(c => c.Text)),
            [
                .. PoisonFacts
                    .Ingredients(rules, a.Substances)
                    .Select(i => new IngredientView(i.Name, i.Cas ?? "-", i.Ec ?? "-", i.Band, i.Hazards)),
            ],
            a.Composition.HasUndeclared
                ? $"Up to {FigureFormat.English.AtMost(a.Composition.UnknownHigh)} of the candle is not declared by its suppliers."
                : "",
            rules.Clause
        );

    private static string Colour(Assessment a) =>
        WaxFigures.Dyes(a.Composition.Recipe) is { Count: > 0 } dyes
            ? $"dyed with {string.Join(", ", dyes)}"
            : "that of the wax (no dye is declared)";

    private static string Toxicology(Assessment a)
    {
        List<string> health =
        [
            .. a
                .Classification.Classes.Where(c => c.Category.Area == HazardArea.Health)
                .Select(c => $"{c.Category.Code}: {c.Working.Sentence}"),
        ];
        string found = health.Count > 0 ? string.Join(" ", health) : "On the declared data no class for health is reached.";
        return $"No test was made on the candle; computed from its ingredients (section 11 of the safety data sheet). {found}";
    }
}
