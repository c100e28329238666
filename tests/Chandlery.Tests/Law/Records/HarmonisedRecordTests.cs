using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Tests.Law.Readers;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Records;

/// <summary>How an entry of a list is cited, found and counted.</summary>
public sealed class HarmonisedRecordTests
{
    private static readonly HarmonisedClasses Mainland = InventedLaw.Read().Edition("mainland").Harmonised;

    private static readonly HarmonisedEntry Entry = TestLaw.Listed("50-00-0", "Glowstuff") with
    {
        IndexNumber = "900-001-00-1",
        Members =
        [
            new EntryMember(["a"], null, "200-001-8"),
            new EntryMember(["b"], "50-00-0", null),
            new EntryMember(["c"], "50-00-0", null),
        ],
    };

    [Fact]
    public void An_entry_is_cited_with_its_number_and_act()
    {
        Assert.Equal("list 900-001-00-1, an act", Mainland.Cite(Entry));
        Assert.Equal("later list 900-001-00-1, an act", Mainland.CiteLater(Entry));
        Assert.Equal("list no index number, an act", Mainland.Cite(Entry with { IndexNumber = "" }));
    }

    [Fact]
    public void A_substance_of_an_own_list_is_told_as_that()
    {
        Assert.Equal("named in batch 3", Mainland.LaterOf(["64-17-5", "50-00-0"]));
        Assert.Equal("taken over later", Mainland.LaterOf(["64-17-5"]));
    }

    [Theory]
    [InlineData("50-00-0", "200-001-8", "b")]
    [InlineData(null, "200-001-8", "a")]
    [InlineData("64-17-5", "200-001-8", "a")]
    [InlineData("64-17-5", null, null)]
    [InlineData(null, null, null)]
    public void A_member_is_found_by_its_first_number_and_then_by_the_other(string? cas, string? ec, string? name) =>
        Assert.Equal(
            name,
            Entry.Member(new SubstanceIdentity("", CasNumber.Parse(cas ?? "").OrNull(), EcNumber.Parse(ec ?? "").OrNull()))?.Names[0]
        );

    [Fact]
    public void An_entry_without_classes_does_not_stand()
    {
        HarmonisedClass unread = new("Rust. 1", null, false);
        Assert.False(Entry.Stands);
        Assert.True((Entry with { Classes = [unread] }).Stands);
        Assert.Empty((Entry with { Classes = [unread] }).Claims);
    }

    [Theory]
    [InlineData("Glow stuff", true)]
    [InlineData("a GLOWING thing", true)]
    [InlineData("dim glow", false)]
    [InlineData("glowed", false)]
    [InlineData("", false)]
    public void A_group_may_hold_what_has_one_of_its_words_and_none_of_the_others(string name, bool mayHold) =>
        Assert.Equal(mayHold, InventedLaw.Read().Substances.Table!.Rules.Groups[0].MayHold(name));

    [Fact]
    public void A_substance_of_the_trade_has_the_row_of_its_allergen()
    {
        Assert.Equal(["Glow"], new KnownSubstance("50-00-0", null, [], null, "Glow").AllergenRows);
        Assert.Empty(new KnownSubstance("50-00-0", null, [], null, null).AllergenRows);
    }

    [Fact]
    public void Names_of_a_listing_are_those_of_what_is_meant()
    {
        SubstanceIdentity meant = new("", CasNumber.Parse("50-00-0").Value, null);
        var listing = new Listing([Entry], [], null, []) { Meant = [meant, meant] };
        Assert.Equal(["b"], listing.NamesIn(Entry));
    }

    [Fact]
    public void What_concerns_is_all_three_lists() =>
        Assert.Equal(["Wilt A", "Yawn 1", "Wilt B"], InventedLaw.Read().Edition("mainland").SafetySheet.Concerning.All.Select(h => h.Code));
}
