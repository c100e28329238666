using Chandlery.Core.Law;
using Chandlery.Tests.Law.Readers;

namespace Chandlery.Tests.Law.Records;

/// <summary>What a kind of product makes of a text, and what may be declared of it.</summary>
public sealed class KindRecordTests
{
    private static readonly ProductKind Jar = InventedLaw.Read().Kinds.Find("jar")!;

    [Theory]
    [InlineData(KindPart.Vessel, true)]
    [InlineData(KindPart.Wicks, true)]
    [InlineData(KindPart.Wax, false)]
    public void It_takes_what_it_needs_or_may_have(KindPart part, bool takes) => Assert.Equal(takes, Jar.Takes(part));

    [Theory]
    [InlineData(true, PhysicalState.Liquid, ProductSort.Burning)]
    [InlineData(true, PhysicalState.Solid, ProductSort.Burning)]
    [InlineData(false, PhysicalState.Liquid, ProductSort.Liquid)]
    [InlineData(false, PhysicalState.Solid, ProductSort.Warmed)]
    public void Its_sort_goes_by_flame_and_state(bool burns, PhysicalState state, ProductSort sort) =>
        Assert.Equal(sort, (Jar with { Burns = burns, State = state }).Sort);

    [Fact]
    public void Parts_have_words_of_their_own()
    {
        Assert.Equal("The jar light: melt the wax.", Jar.Say("The candle: melt the wax."));
        Assert.Equal("The jar light: run the fat.", Jar.SayOfParts("The candle: melt the wax."));
    }

    [Theory]
    [InlineData("label", true)]
    [InlineData("tag", false)]
    public void A_label_that_is_refused_stops_the_sale(string paper, bool stops) =>
        Assert.Equal(stops, new Refusal([paper], [], "", Core.Hazards.Citation.None).StopsSale);

    [Fact]
    public void A_refusal_holds_always_or_with_one_of_its_hazards()
    {
        Lawbook lawbook = InventedLaw.Read();
        Refusal some = lawbook.Edition("mainland").Refuses[0];
        Assert.True(some.Holds(some.Hazards));
        Assert.True(some.Holds([lawbook.Vocabulary.Categories[0], some.Hazards[0]]));
        Assert.False(some.Holds([lawbook.Vocabulary.Categories[0]]));
        Assert.False(some.Holds([]));
        Assert.True((some with { Hazards = [] }).Holds([]));
    }

    [Theory]
    [InlineData(PhysicalState.Solid, 4)]
    [InlineData(PhysicalState.Liquid, 6)]
    public void Liquids_have_rules_of_their_own_before_those_of_all(PhysicalState state, int rules)
    {
        Edition edition = InventedLaw.Read().Edition("mainland");
        Assert.Equal(rules, edition.RulesFor(state).Count);
        Assert.Equal(state == PhysicalState.Liquid, ReferenceEquals(edition.RulesFor(state)[0], edition.Liquids!.Flash));

        // That kindling takes a flame is answered by the flash point of a liquid.
        Assert.Equal(
            state == PhysicalState.Liquid ? ["it takes a pond"] : ["it takes a flame"],
            edition.NotComputedFor(state).Select(n => n.Why)
        );
        Assert.Equal(
            state == PhysicalState.Liquid ? ["UN 0002", "UN 0003"] : ["UN 0001"],
            edition.SafetySheet.Transport.EntriesOf(state).Select(e => e.UnNumber)
        );
    }

    [Fact]
    public void An_edition_without_rules_for_liquids_has_those_of_all()
    {
        Edition edition = InventedLaw.Read().Edition("mainland") with { Liquids = null };
        Assert.Equal(edition.Rules, edition.RulesFor(PhysicalState.Liquid));
        Assert.Equal(edition.NotComputed, edition.NotComputedFor(PhysicalState.Liquid));
    }

    [Fact]
    public void Elements_are_those_of_the_category() =>
        Assert.Equal(
            ["Blush. 1"],
            InventedLaw.Read().Edition("mainland").ElementsOf(InventedLaw.Read().Vocabulary.Categories[0]).Select(e => e.Hazard.Code)
        );

    [Fact]
    public void A_recall_knows_what_is_kept_and_which_words_lessen_it()
    {
        var recalls = InventedLaw.Read().Safety.Recalls.Find("mainland")!;
        Assert.Equal(["voluntary"], recalls.Lessening("A Voluntary recall"));
        Assert.Equal(6, recalls.KeepOf(Core.Law.ProductSafety.Kept.Complainants)!.Years);
        Assert.Null(recalls.KeepOf(Core.Law.ProductSafety.Kept.SupplyChain));
    }
}
