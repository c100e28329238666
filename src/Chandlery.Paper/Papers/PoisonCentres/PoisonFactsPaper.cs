using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Notified;
using Chandlery.Core.Quantities;
using Chandlery.Core.SafetyDataSheets;
using Chandlery.Paper.Scenes;
using Chandlery.Yaml;

namespace Chandlery.Paper.Papers.PoisonCentres;

/// <summary>The facts that a notification to the poison centres asks for; due only with a UFI.</summary>
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
            return new MissingPaper(a.Kind.Say("they are due with a UFI, and the candle has none."), IsDue: false, []);
        }

        PaperDocument? page = request.Shop.Read(View(request, ufi, rules), problems) is { } document
            ? ManyPages.Lay(
                document,
                request.Shop,
                (_, _) => ManyPages.Head(a.Candle.Name, $"Facts for the poison centres · {a.AsOf:yyyy-MM-dd}"),
                (page, count) => [ManyPages.Line(a.Maker.Name, $"{a.Id} · page {page} of {count}")]
            )
            : null;
        return Outcome(page, problems);
    }

    private static PoisonFactsView View(PaperRequest request, string ufi, PoisonCentreRules rules)
    {
        Assessment a = request.Assessment;
        IReadOnlyList<MixtureInMixture> mixtures = MixturesInMixture.Of(a.Composition.Recipe);
        string? category = a.Candle.ProductCategory ?? a.Maker.ProductCategory;
        return new PoisonFactsView
        {
            Name = a.Candle.Name,
            Ufi = ufi,
            Maker = MakerView.Of(a.Maker),
            Places = string.Join("; ", a.Places.Select(Place)),
            Use =
                $"{(a.Kind.Burns ? "scented candle" : a.Kind.Name)} for {(a.Candle.Use == CandleUse.Outdoor ? "outdoors" : "indoors")}, consumer use",
            Category = category ?? "unknown: none is declared ('productCategory')",
            Colour = Colour(a),
            State = a.Kind.State == PhysicalState.Liquid ? "liquid" : "solid",
            Acidity =
                a.Kind.State == PhysicalState.Liquid
                    ? "unknown: measure it, or say why it cannot be measured"
                    : "not applicable: solid, and wax does not dissolve in water",
            Packages = string.Join("; ", a.Notification.Value.Packages.Select(Package)),
            Classes =
                a.Classification.Classes.Count == 0
                    ? "not classified"
                    : string.Join(", ", a.Classification.Classes.Select(c => $"{c.Category.Code} ({c.Statement})")),
            Label = string.Join(", ", a.Label.All.Select(c => c.Text)),
            Lacking = [.. Lacking(a, category, mixtures)],
            Ingredients =
            [
                .. PoisonFacts
                    .Ingredients(rules, a.Substances)
                    .Select(i => new IngredientView(i.Name, i.Cas ?? "-", i.Ec ?? "-", i.Band, i.Hazards)),
            ],
            Unknown = a.Composition.HasUndeclared
                ? a.Kind.Say(
                    $"Up to {FigureFormat.English.AtMost(a.Composition.UnknownHigh)} of the candle is not declared by its suppliers."
                )
                : "",
            Mixtures = [.. mixtures.Select(BoughtMixtureView.Of)],
            Generics = [.. GenericUses.Of(rules, a.Composition.Recipe, a.Substances).Select(GenericView.Of)],
            Group = a.Kind.Say(Group(a.Notification.Value.GroupWith, rules.Group)),
            GroupClause = rules.Group.Clause,
            Toxicology = ToxicologyLines.Of(request, English(request), rules.ToxicologySection),
            Clause = rules.Clause,
            Clauses = PointClausesView.Of(rules.Points),
        };
    }

    // The paper is a worksheet for the maker; the state's own language is asked for beside it.
    private static Language English(PaperRequest request) => request.Lawbook.FindLanguage("en") ?? request.Language;

    private static string Place(Place place) => $"{place.Name}: {string.Join(place.EitherOf ? " or " : " and ", place.Languages)}";

    private static string Package(SoldPackage package) =>
        $"{package.Vessel} ({package.Material}): holds {package.Brimful}, filled with {Quantity(package)}, {(package.Contents is { } filled ? filled.ToString() : "volume unknown: no 'fillMl' is declared")}";

    private static string Quantity(SoldPackage package) =>
        package.Volume is { } volume
            ? $"{FigureFormat.English.Declared(volume.Value)} ml"
            : $"{FigureFormat.English.Declared(package.Net.Value)} g";

    private static IEnumerable<string> Lacking(Assessment a, string? category, IReadOnlyList<MixtureInMixture> mixtures)
    {
        if (category is null)
        {
            yield return a.Kind.Say(
                "The product category: look its code up in the product categorisation system of the portal and write 'productCategory' into the candle's file, or into the maker's for all candles."
            );
        }

        if (a.Maker.Email is null)
        {
            yield return "An electronic address of the maker ('email').";
        }

        foreach (MixtureInMixture mixture in mixtures.Where(m => m.Lacking.Length > 0))
        {
            yield return mixture.Lacking;
        }
    }

    private static string Group(IReadOnlyList<string> others, GroupSubmissionRules rules) =>
        others.Count > 0
            ? $"May be told in one group with {string.Join(", ", others)}: the same classes for {Areas(rules)} hazards, and nothing differs but perfumes of at most {FigureFormat.English.AtMost(rules.DifferingPerfumesUpTo)} in each."
            : $"None of the maker's other candles may be told in one group with it: that needs the same classes for {Areas(rules)} hazards and a composition that differs in nothing but perfumes of at most {FigureFormat.English.AtMost(rules.DifferingPerfumesUpTo)}.";

    private static string Areas(GroupSubmissionRules rules) =>
        string.Join(" and ", rules.SameClassesFor.Select(a => a.ToString().ToLowerInvariant()));

    private static string Colour(Assessment a) =>
        WaxFigures.Dyes(a.Composition.Recipe) is { Count: > 0 } dyes ? $"dyed with {string.Join(", ", dyes)}"
        : a.Kind.State == PhysicalState.Liquid ? "that of the liquid (no dye is declared)"
        : "that of the wax (no dye is declared)";
}
