using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Tests.Support;
using Chandlery.Yaml;
using CsCheck;

namespace Chandlery.Tests.Law;

/// <summary>What must hold for every mixture, tried on generated ones.</summary>
public class LawPropertyTests
{
    private static readonly string[] Hazards =
    [
        "Skin Sens. 1, H317",
        "Skin Sens. 1A, H317",
        "Skin Sens. 1B, H317",
        "Skin Irrit. 2, H315",
        "Skin Corr. 1B, H314",
        "Eye Irrit. 2, H319",
        "Eye Dam. 1, H318",
        "Acute Tox. 4, H302",
        "Acute Tox. 3, H331",
        "Aquatic Acute 1, H400",
        "Aquatic Chronic 1, H410",
        "Aquatic Chronic 2, H411",
        "Aquatic Chronic 3, H412",
        "STOT RE 1, H372",
        "Repr. 2, H361d",
        "STOT SE 3, H336",
    ];

    private static readonly Gen<Ingredient> Line = Gen.Select(
        Gen.Int[0, 9_999],
        Gen.Double[0.001, 8],
        Gen.Int[0, 15].Select(i => Hazards[i]).Array[0, 4],
        Gen.Bool.Select(ten => ten ? 10.0 : 1.0),
        (id, percent, hazards, m) =>
            TestLaw.Line("s" + id, Math.Round(percent, 6), [.. hazards.DistinctBy(h => TestLaw.Claim(h).Category.Group)], m: m)
    );

    private static readonly Gen<Ingredient[]> Mixture = Line.Array[1, 10].Select(lines => lines.DistinctBy(l => l.Identity.Name).ToArray());

    private static string Codes(IEnumerable<Ingredient> lines) => TestLaw.Codes([.. lines]);

    [Fact]
    public void OrderChangesNothing() => Mixture.Sample(lines => Codes(lines) == Codes(lines.Reverse()), iter: 2000);

    [Fact]
    public void SplittingAnIngredientChangesNothing() =>
        Mixture.Sample(
            lines =>
            {
                Ingredient half = lines[0] with { Share = DeclaredRange.Exactly(lines[0].Share.High.Value / 2) };
                return Codes(lines) == Codes([half, .. lines.Skip(1), half]);
            },
            iter: 2000
        );

    [Fact]
    public void MoreOfAHazardousIngredientIsNeverMilder() =>
        Mixture.Sample(
            lines =>
            {
                Ingredient more = lines[0] with { Share = DeclaredRange.Exactly(lines[0].Share.High.Value * 1.7) };
                Classification before = TestLaw.Classify(lines);
                Classification after = TestLaw.Classify([more, .. lines.Skip(1)]);
                return before.Classes.All(c =>
                        after.Classes.Any(a => a.Category.Group == c.Category.Group && a.Category.Severity <= c.Category.Severity)
                    ) && before.Sensitisers.All(s => after.Sensitisers.Any(a => a.Substance.Name == s.Substance.Name));
            },
            iter: 2000
        );

    [Fact]
    public void ScalingGramsChangesNothing() =>
        Gen.Select(Gen.Double[1, 5000], Gen.Double[0.1, 400], Gen.Double[0.01, 1000])
            .Sample(
                (wax, oil, factor) =>
                {
                    string Of(double w, double o)
                    {
                        Recipe r = RecipeOf(w, o);
                        Composition c = Composer.Compose(r);
                        Classification k = TestLaw.Law().Judge(c).Classification;
                        return string.Join(", ", k.Classes.Select(x => x.Category.Code)) + k.Supplemental;
                    }

                    return Of(wax, oil) == Of(wax * factor, oil * factor);
                },
                iter: 500
            );

    private static Recipe RecipeOf(double wax, double oil)
    {
        var problems = new Problems();
        var inv = System.Globalization.CultureInfo.InvariantCulture;
        string candle =
            $"declares: candle\nname: T\nuse: indoor\nvessel: v\nnetGrams: 100\nwax: w\nwaxGrams: {wax.ToString("0.######", inv)}\noils: [ {{ oil: o, grams: {oil.ToString("0.######", inv)} }} ]\nwicks: {{ count: 1, trimToMm: 5 }}\nsoldIn: [IE]";
        Catalogue catalogue = TestLaw.Read(
            problems,
            ("w.yaml", "declares: wax\nname: W\nsupplier: N\ningredients: [ { name: wax, share: 100, classes: not classified } ]"),
            (
                "o.yaml",
                "declares: oil\nname: O\nsupplier: N\ndocument: D\nrevised: 2026-01-01\ningredients: [ { name: a, share: 20, classes: [\"Skin Sens. 1B, H317\", \"Aquatic Chronic 1, H410\"], m: 1 }, { name: b, share: 30, classes: [\"Eye Dam. 1, H318\"] } ]"
            ),
            ("candle.yaml", candle)
        );
        Recipe? recipe = RecipeMaker.FromPlan(catalogue.OfKind<Candle>().Single(), catalogue, problems);
        Assert.Empty(problems.Found);
        return recipe!;
    }
}
