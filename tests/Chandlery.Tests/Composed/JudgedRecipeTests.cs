using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Core.Quantities;
using Chandlery.Files;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Composed;

/// <summary>Candles share a composition and a verdict only when nothing in their recipes differs.</summary>
public sealed class JudgedRecipeTests
{
    private static readonly Oil Oil = TestLaw.Oil("o", "Oil", TestLaw.Line("Linalool", 100, ["Skin Sens. 1B, H317"]));
    private static readonly Wax Wax = TestLaw.Mixture().Recipe.Waxes[0].Wax;
    private static readonly Extra Extra = new()
    {
        Id = "e",
        Place = Oil.Place,
        Name = "Dye",
        Supplier = "S",
        Purpose = "dye",
        Ingredients = [],
        Highest = null,
    };

    // Each figure that a recipe has, and none of them the same as another.
    private static readonly double[] Figures = [7.5, 99.5, 91.5, 1, 1.1, 8.2, 7.6, 7.4, 12];

    public static TheoryData<int> EachFigure => [.. Enumerable.Range(0, Figures.Length)];

    private static Recipe Make(double[] f, Oil? oil = null, Wax? wax = null, Extra? extra = null) =>
        new(
            [new OilShare(oil ?? Oil, new MassPercent(f[0]), new MassPercent(f[1]))],
            [new WaxShare(wax ?? Wax, new MassPercent(f[2]))],
            [new ExtraShare(extra ?? Extra, new MassPercent(f[3]), new MassPercent(f[4]))],
            new MassPercent(f[5]),
            new MassPercent(f[6]),
            new MassPercent(f[7]),
            new MassPercent(f[8])
        );

    private static LiquidFacts Liquid(double flash) =>
        new()
        {
            Density = null,
            FlashPoint = new FlashPoint(new Celsius(flash), false, null),
            Boiling = null,
            SustainsCombustion = null,
            Viscosity = null,
            FormsFlammableVapour = null,
            Classes = null,
            Document = null,
        };

    private static void AreDifferent(Recipe one, LiquidFacts? oneLiquid, Recipe other, LiquidFacts? otherLiquid)
    {
        Assert.NotEqual(new RecipeKey(one, oneLiquid), new RecipeKey(other, otherLiquid));
        var recipes = new JudgedRecipes();
        Assert.NotSame(recipes.Of(one, oneLiquid), recipes.Of(other, otherLiquid));
    }

    [Fact]
    public void Recipes_of_the_same_products_and_shares_are_judged_once()
    {
        var recipes = new JudgedRecipes();
        JudgedRecipe judged = recipes.Of(Make(Figures), Liquid(60));
        Assert.Same(judged, recipes.Of(Make([.. Figures]), Liquid(60)));
        LawInForce law = TestLaw.Law();
        Assert.Same(judged.Under(law), judged.Under(law));
        Assert.Equal("Skin Sens. 1B", Assert.Single(judged.Under(law).Classification.Classes).Category.Code);
        Assert.NotSame(judged.Under(law), judged.Under(TestLaw.Law(day: TestLaw.Today.AddDays(1))));
    }

    [Theory]
    [MemberData(nameof(EachFigure))]
    public void The_last_bit_of_any_share_makes_another_recipe(int at)
    {
        double[] figures = [.. Figures];
        figures[at] = Math.BitIncrement(figures[at]);
        AreDifferent(Make(Figures), null, Make(figures), null);
    }

    [Fact]
    public void Another_product_or_liquid_makes_another_recipe()
    {
        Recipe recipe = Make(Figures);
        AreDifferent(recipe, null, Make(Figures, oil: Oil with { }), null);
        AreDifferent(recipe, null, Make(Figures, wax: Wax with { }), null);
        AreDifferent(recipe, null, Make(Figures, extra: Extra with { }), null);
        AreDifferent(recipe, null, recipe with { Extras = [] }, null);
        AreDifferent(recipe, null, recipe, Liquid(60));
        AreDifferent(recipe, Liquid(60), recipe, Liquid(61));
    }

    // A figure that joins a recipe must join what tells recipes apart, and the checks here.
    [Fact]
    public void No_figure_or_product_of_a_recipe_is_left_out()
    {
        Type[] types = [typeof(Recipe), typeof(OilShare), typeof(WaxShare), typeof(ExtraShare)];
        string[] kinds = [.. types.SelectMany(t => t.GetProperties()).Select(p => p.PropertyType.Name)];
        Assert.Equal(Figures.Length, kinds.Count(k => k == nameof(MassPercent)));
        Assert.Equal(
            [nameof(Core.Declared.Extra), nameof(Core.Declared.Oil), nameof(Core.Declared.Wax)],
            kinds.Where(k => k != nameof(MassPercent) && !k.StartsWith("IReadOnlyList", StringComparison.Ordinal)).Order()
        );
    }

    [Fact]
    public void Thousands_of_different_recipes_are_not_all_kept()
    {
        var recipes = new JudgedRecipes();
        JudgedRecipe first = recipes.Of(Make(Figures), null);
        for (int i = 0; i < 1000; i++)
        {
            recipes.Of(Make([i, .. Figures[1..]]), null);
        }

        JudgedRecipe again = recipes.Of(Make(Figures), null);
        Assert.NotSame(first, again);
        Assert.Equal(first.Composition.Ingredients.Select(i => i.High), again.Composition.Ingredients.Select(i => i.High));
    }

    [Fact]
    public void A_candle_says_the_same_whoever_shares_its_recipe()
    {
        Catalogue demo = DeclarationFolder.Open(TestLaw.DemoFolder, TestLaw.Lawbook.Vocabulary).Catalogue;
        var catalogue = new Catalogue(
            [.. demo.All, .. demo.OfKind<Candle>().Select(c => c with { Id = $"{c.Id}-again", OnMarketSince = new DateOnly(2020, 1, 1) })],
            new Problems()
        );
        var shared = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today);
        foreach (Candle candle in catalogue.OfKind<Candle>())
        {
            var alone = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today);
            Assert.Equal(Told(alone, candle), Told(shared, candle));
        }
    }

    private static string Told(Assessor assessor, Candle candle) => AssessmentJson.Write(assessor.Assess(candle, null, new Problems()));
}
