using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Composed;

public class CompositionTests
{
    private const string Wax = """
        declares: wax
        name: Wax
        supplier: Nobody
        ingredients: [ { name: Wax stuff, cas: 8002-74-2, share: 100, classes: not classified } ]
        """;

    private const string Jar = """
        declares: vessel
        name: Jar
        material: glass
        brimfulMl: 300
        """;

    private static string Oil(string ingredients, string more = "") =>
        $"""
            declares: oil
            name: Oil
            supplier: Nobody
            document: SDS 1
            revised: 2026-01-31
            {more}
            ingredients:
            {ingredients}
            """;

    private static string Candle(string recipe) =>
        $"""
            declares: candle
            name: Test
            use: indoor
            vessel: jar
            netGrams: 100
            wax: wax
            {recipe}
            wicks: {"{ count: 1, trimToMm: 5 }"}
            soldIn: [IE]
            """;

    private static Composition Compose(string recipe, params (string File, string Text)[] others)
    {
        var problems = new Problems();
        Catalogue catalogue = TestLaw.Read(problems, [("wax.yaml", Wax), ("jar.yaml", Jar), ("candle.yaml", Candle(recipe)), .. others]);
        Assert.Empty(problems.Found);
        Recipe? made = RecipeMaker.FromPlan(catalogue.OfKind<Candle>().Single(), catalogue, problems);
        Assert.Empty(problems.Found);
        return Composer.Compose(made!);
    }

    private static ComposedIngredient Find(Composition composition, string name) =>
        composition.Ingredients.Single(i => i.Identity.Name == name);

    private const string Plain = "  - { name: A, cas: 78-70-6, share: 50, classes: not classified }";

    // Arithmetic: x % of the wax is x / (100 + x) of the candle.
    [Theory]
    [InlineData("load: { percent: 10, of: wax }", 10, 9.0909090909)]
    [InlineData("load: { percent: 10, of: candle }", 11.1111111111, 10)]
    public void TheTwoMeaningsOfLoad(string load, double ofWax, double ofCandle)
    {
        Recipe r = Compose(load + "\noils: [ { oil: oil, share: 100 } ]", ("oil.yaml", Oil(Plain))).Recipe;
        Assert.Equal(ofWax, r.MeltLoadOfWax.Value, 9);
        Assert.Equal(ofCandle, r.MeltLoadOfCandle.Value, 9);
        Assert.Equal(ofCandle, r.Load.Value, 9);
    }

    [Theory]
    [InlineData("topUp: { scented: no, percentOfCandle: 20 }", 8)]
    [InlineData("topUp: { scented: no, grams: 20 }", 8)]
    [InlineData("topUp: { scented: yes, percentOfCandle: 20 }", 10)]
    public void AnUnscentedSecondPourDilutes(string topUp, double expected)
    {
        Composition c = Compose(
            $"load: {{ percent: 10, of: candle }}\n{topUp}\noils: [ {{ oil: oil, share: 100 }} ]",
            ("oil.yaml", Oil(Plain))
        );
        Assert.Equal(expected, c.Recipe.Load.Value, 9);
        Assert.Equal(expected / 2, Find(c, "A").High.Value, 9);
        Assert.Equal(100, c.Ingredients.Sum(i => i.High.Value) + c.UnknownHigh.Value, 9);
    }

    [Theory]
    [InlineData("waxGrams: 90\noils: [ { oil: oil, grams: 10 } ]", 10)]
    [InlineData("waxGrams: 90\noils: [ { oil: oil, millilitres: 12.5 } ]", 10)]
    [InlineData("waxGrams: 90\noils: [ { oil: oil, drops: 400 } ]", 10)]
    public void GramsMillilitresAndDropsMeanTheSame(string recipe, double expected)
    {
        Composition c = Compose(recipe, ("oil.yaml", Oil(Plain, "densityGramsPerMl: 0.8\ndropMilligrams: 25")));
        Assert.Equal(expected, c.Recipe.Load.Value, 9);
    }

    [Theory]
    [InlineData("waxGrams: 90\noils: [ { oil: oil, millilitres: 12.5 } ]", "its density is not declared")]
    [InlineData("waxGrams: 90\noils: [ { oil: oil, drops: 4 } ]", "the mass of its drop is not declared")]
    [InlineData("waxGrams: 90\noils: [ { oil: oill, grams: 4 } ]", "Did you mean 'oil'")]
    public void WhatCannotBeWeighedIsRefused(string recipe, string expected)
    {
        var problems = new Problems();
        Catalogue catalogue = TestLaw.Read(
            problems,
            ("wax.yaml", Wax),
            ("jar.yaml", Jar),
            ("candle.yaml", Candle(recipe)),
            ("oil.yaml", Oil(Plain))
        );
        Assert.Null(RecipeMaker.FromPlan(catalogue.OfKind<Candle>().Single(), catalogue, problems));
        Assert.Contains(expected, Assert.Single(problems.Found).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void OneSubstanceOfSeveralOilsIsSummedByCasThenEcThenName()
    {
        Composition c = Compose(
            "load: { percent: 10, of: candle }\noils: [ { oil: one, share: 50 }, { oil: two, share: 50 } ]",
            (
                "one.yaml",
                Oil(
                    "  - { name: Linalool, cas: 78-70-6, ec: 201-134-4, share: 20, classes: not classified }\n  - { name: Citral, share: 4, classes: not classified }"
                )
            ),
            (
                "two.yaml",
                Oil(
                    "  - { name: 3.7-Dimethylocta-1.6-dien-3-ol, ec: 201-134-4, share: 10 - 20, classes: not classified }\n  - { name: citral, share: 6, classes: not classified }"
                )
            )
        );
        ComposedIngredient linalool = Find(c, "Linalool");
        Assert.Equal(1.5, linalool.Low.Value, 9);
        Assert.Equal(2.0, linalool.High.Value, 9);
        Assert.Equal(0.5, Find(c, "Citral").High.Value, 9);
        Assert.Contains(c.Remarks, r => r.Contains("counted as one substance", StringComparison.Ordinal));
    }

    [Fact]
    public void OneNameWithTwoNumbersIsTwoSubstancesAndARemark()
    {
        Composition c = Compose(
            "load: { percent: 10, of: candle }\noils: [ { oil: one, share: 50 }, { oil: two, share: 50 } ]",
            ("one.yaml", Oil("  - { name: Limonene, cas: 5989-27-5, share: 20, classes: not classified }")),
            ("two.yaml", Oil("  - { name: Limonene, cas: 138-86-3, share: 20, classes: not classified }"))
        );
        Assert.Equal(2, c.Ingredients.Count(i => i.Identity.Name == "Limonene"));
        Assert.Contains(c.Remarks, r => r.Contains("stands with two numbers", StringComparison.Ordinal));
    }

    [Fact]
    public void ConstituentsOfANaturalOilAreNotCountedTwice()
    {
        Composition c = Compose(
            "load: { percent: 10, of: candle }\noils: [ { oil: oil, share: 100 } ]",
            (
                "oil.yaml",
                Oil(
                    """
                      - name: Orange oil
                        cas: 8028-48-6
                        share: 60
                        classes: not classified
                        constituents:
                          - { name: d-Limonene, cas: 5989-27-5, share: 95, classes: not classified }
                      - { name: d-Limonene, cas: 5989-27-5, share: 10, classes: not classified }
                      - { name: Other, share: 30, classes: not classified }
                    """
                )
            )
        );
        Assert.Equal(6.7, Find(c, "d-Limonene").High.Value, 9);
        ComposedIngredient rest = Find(c, "Orange oil");
        Assert.Equal(0.3, rest.High.Value, 9);
        Assert.Equal(6, rest.WholeHigh.Value, 9);
        Assert.Equal(100, c.Ingredients.Sum(i => i.High.Value), 9);
        Assert.Equal(0, c.UnknownHigh.Value, 9);
    }

    [Fact]
    public void AConstituentThatIsAlsoListedIsNotAddedAgain()
    {
        Composition c = Compose(
            "load: { percent: 10, of: candle }\noils: [ { oil: oil, share: 100 } ]",
            (
                "oil.yaml",
                Oil(
                    """
                      - name: Orange oil
                        share: 20
                        classes: not classified
                        constituents:
                          - { name: d-Limonene, cas: 5989-27-5, share: 95, classes: not classified, listedSeparately: yes }
                      - { name: d-Limonene, cas: 5989-27-5, share: 30, classes: not classified }
                    """
                )
            )
        );
        Assert.Equal(3.0, Find(c, "d-Limonene").High.Value, 9);
        Assert.Equal(0.1, Find(c, "Orange oil").High.Value, 9);
    }

    [Fact]
    public void WhatNobodyDeclaresStaysUnknown()
    {
        Composition c = Compose(
            "load: { percent: 10, of: candle }\noils: [ { oil: oil, share: 100 } ]",
            ("oil.yaml", Oil("  - { name: A, share: 30 - 50, classes: not classified }"))
        );
        Assert.Equal(5, c.UnknownLow.Value, 9);
        Assert.Equal(7, c.UnknownHigh.Value, 9);
    }

    [Fact]
    public void ALineWithoutAnUpperEndIsBoundedByTheOthers()
    {
        Composition c = Compose(
            "load: { percent: 10, of: candle }\noils: [ { oil: oil, share: 100 } ]",
            (
                "oil.yaml",
                Oil("  - { name: A, share: '>= 50', classes: not classified }\n  - { name: B, share: 20 - 30, classes: not classified }")
            )
        );
        Assert.Equal(8, Find(c, "A").High.Value, 9);
    }

    [Fact]
    public void ABatchAsWeighedWinsOverThePlan()
    {
        var problems = new Problems();
        const string batch = """
            declares: batch
            candle: candle
            code: B1
            poured: 2026-11-01
            weighed: { waxGrams: 900, oils: [ { oil: oil, grams: 50 } ], topUp: { scented: no, grams: 50 } }
            """;
        Catalogue catalogue = TestLaw.Read(
            problems,
            ("wax.yaml", Wax),
            ("candle.yaml", Candle("load: { percent: 10, of: candle }\noils: [ { oil: oil, share: 100 } ]")),
            ("oil.yaml", Oil(Plain)),
            ("batch.yaml", batch)
        );
        Recipe? r = RecipeMaker.FromBatch(catalogue.OfKind<Batch>().Single(), catalogue.OfKind<Candle>().Single(), catalogue, problems);
        Assert.Empty(problems.Found);
        Assert.Equal(5, r!.Load.Value, 9);
    }
}
