using Chandlery.Core.Law;
using Chandlery.Tests.Law.Readers;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Records;

/// <summary>Which rows of a safety data sheet stand, and which marks need a condition.</summary>
public sealed class SheetRowTests
{
    private static readonly Lawbook Lawbook = InventedLaw.Read();

    private static SheetConditions Holding(string[] facts, params string[] classes) =>
        new(facts.Select(f => Enum.Parse<SheetCondition>(f, ignoreCase: true)).ToHashSet(), classes.ToHashSet());

    [Theory]
    [InlineData("burns", "", true)]
    [InlineData("burns,warmed", "", true)]
    [InlineData("", "Wilt", true)]
    [InlineData("burns", "Wilt", true)]
    [InlineData("warmed", "", false)]
    [InlineData("", "", false)]
    [InlineData("burns,liquid", "", false)]
    [InlineData("burns", "Yawn", false)]
    public void A_row_stands_when_one_condition_holds_and_none_that_it_excludes(string facts, string classes, bool stands)
    {
        SheetRow glow = Lawbook.SheetSentences.Rows[1];
        Assert.Equal(
            stands,
            glow.Stands(
                Holding(facts.Split(',', StringSplitOptions.RemoveEmptyEntries), classes.Split(',', StringSplitOptions.RemoveEmptyEntries))
            )
        );
    }

    [Fact]
    public void A_row_without_conditions_always_stands() => Assert.True(Lawbook.SheetSentences.Rows[0].Stands(Holding([])));

    [Fact]
    public void Conditions_are_empty_without_facts_and_classes()
    {
        Assert.True(Holding([]).IsEmpty);
        Assert.False(Holding(["burns"]).IsEmpty);
        Assert.False(Holding([], "Wilt").IsEmpty);
    }

    [Fact]
    public void A_laws_own_sentence_stands_in_the_stead_of_the_shared_one_or_last()
    {
        IReadOnlyList<SheetRow> rows = Lawbook.SheetSentences.RowsFor(Lawbook.Edition("mainland").SafetySheet);
        Assert.Equal(["product", "ownGlow", "", "melts", "ownLast"], rows.Select(r => r is SheetSentence sentence ? sentence.Key : ""));
    }

    [Theory]
    [InlineData(SheetMark.Ufi, "hasUfi")]
    [InlineData(SheetMark.SupplierEmail, "hasEmail")]
    [InlineData(SheetMark.SupplierWeb, "hasWeb")]
    [InlineData(SheetMark.EmergencyTelephone, "hasEmergencyTelephone")]
    [InlineData(SheetMark.Undeclared, "hasUndeclared")]
    [InlineData(SheetMark.Concerning, "hasConcerning")]
    [InlineData(SheetMark.Persistent, "hasPersistent")]
    [InlineData(SheetMark.EndocrineForHealth, "hasEndocrineForHealth")]
    [InlineData(SheetMark.EndocrineForEnvironment, "hasEndocrineForEnvironment")]
    [InlineData(SheetMark.Dyes, "dyed")]
    [InlineData(SheetMark.MeltingLow, "meltsAtOneTemperature, meltsOverARange")]
    [InlineData(SheetMark.MeltingHigh, "meltsAtOneTemperature, meltsOverARange")]
    [InlineData(SheetMark.DensityLow, "hasOneDensity, hasSeveralDensities")]
    [InlineData(SheetMark.DensityHigh, "hasOneDensity, hasSeveralDensities")]
    [InlineData(SheetMark.FlashPoints, "hasOils")]
    [InlineData(SheetMark.FlashPoint, "hasFlashPoint")]
    [InlineData(SheetMark.BoilingPoint, "hasBoilingPoint")]
    [InlineData(SheetMark.Viscosity, "hasViscosity")]
    [InlineData(SheetMark.LiquidDensity, "hasLiquidDensity")]
    [InlineData(SheetMark.LimitedUpTo, "limitedQuantity")]
    [InlineData(SheetMark.TransportNames, "namedForTransport")]
    [InlineData(SheetMark.TransportClasses, "dangerousGoods, dangerousGoodsInSmallPackage, dangerousGoodsInLargePackage")]
    [InlineData(SheetMark.Product, "")]
    public void A_mark_that_may_have_no_value_needs_a_condition(SheetMark mark, string needs) =>
        Assert.Equal(needs, string.Join(", ", SheetMarkNeeds.Of(mark).Select(EnumName.Of)));
}
