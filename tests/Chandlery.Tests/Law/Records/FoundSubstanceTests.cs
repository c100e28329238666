using System.Globalization;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Tests.Law.Readers;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Records;

/// <summary>What the invented list knows of a substance: by number or name, on a day, and as far as a law has taken it over.</summary>
public sealed class FoundSubstanceTests
{
    private static readonly Lawbook Lawbook = InventedLaw.Read();
    private static readonly SubstanceList List = Lawbook.Substances;
    private static readonly HarmonisedClasses UpToSecond = Lawbook.Edition("mainland").Harmonised;

    private static SubstanceIdentity Named(string name) => new(name, null, null);

    private static SubstanceIdentity Numbered(string? cas, string? ec = null) =>
        new("", CasNumber.Parse(cas ?? "").OrNull(), EcNumber.Parse(ec ?? "").OrNull());

    private static Listing Find(SubstanceIdentity identity, string day = "2026-06-01", HarmonisedClasses? here = null) =>
        List.Find(identity, DateOnly.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture), here ?? UpToSecond);

    private static IEnumerable<string> Acts(IEnumerable<HarmonisedEntry> entries) => entries.Select(e => e.Act.Title);

    [Theory]
    [InlineData("Dimstuff", "Dim Act")]
    [InlineData("dim STUFF", "Dim Act")]
    [InlineData("shine", "Stuff Act")]
    [InlineData("Shinestuff", "Stuff Act")]
    [InlineData("slowstuff", "First Act")]
    [InlineData("twin", "Twin Act")]
    [InlineData("Soonstuff", "")]
    [InlineData("nothing", "")]
    [InlineData("", "")]
    public void A_name_finds_the_entry_that_has_it(string name, string act) =>
        Assert.Equal(act.Length == 0 ? [] : [act], Acts(Find(Named(name)).Entries).Distinct());

    [Theory]
    [InlineData("50-00-0", null, "Stuff Act")]
    [InlineData("64-17-5", null, "Stuff Act")]
    [InlineData(null, "203-632-7", "Dim Act")]
    [InlineData(null, "200-289-5", "First Act")]
    [InlineData(null, "203-448-7", "Twin Act")]
    [InlineData("56-81-5", null, "First Act")]
    [InlineData("120-57-0", null, "")]
    public void A_number_finds_every_entry_that_has_it(string? cas, string? ec, string acts) =>
        Assert.Equal(acts, string.Join(", ", Acts(Find(Numbered(cas, ec)).Entries)));

    [Theory]
    [InlineData("2026-01-15", 0)]
    [InlineData("2026-01-16", 1)]
    [InlineData("2028-01-17", 1)]
    [InlineData("2028-01-18", 0)]
    public void An_entry_holds_from_its_first_day_to_its_last(string day, int entries) =>
        Assert.Equal(entries, Find(Numbered("50-00-0"), day).Entries.Count);

    [Fact]
    public void What_a_later_act_says_is_known_elsewhere()
    {
        Listing here = Find(Numbered("67-66-3"));
        Assert.Empty(here.Entries);
        Assert.Equal(["Third Act"], Acts(here.Elsewhere));
        Listing there = Find(Numbered("67-66-3"), here: UpToSecond with { UpTo = "" });
        Assert.Equal(["Third Act"], Acts(there.Entries));
        Assert.Empty(there.Elsewhere);
        Assert.Empty(Find(Numbered("56-81-5")).Elsewhere);
    }

    [Theory]
    [InlineData(0, "SECOND", true)]
    [InlineData(1, "SECOND", true)]
    [InlineData(2, "SECOND", false)]
    [InlineData(2, "", true)]
    public void An_act_is_taken_over_up_to_the_last(int act, string upTo, bool isTakenOver) =>
        Assert.Equal(isTakenOver, List.IsTakenOver(List.Table!.Rules.Acts[act], UpToSecond with { UpTo = upTo }));

    [Fact]
    public void What_is_expected_and_what_is_an_extract_is_told_of_its_numbers()
    {
        Assert.Equal(["draft 5"], Find(Named("Soonstuff")).Expected.Select(e => e.Act));
        Assert.Equal(["draft 5"], Find(Numbered(null, "204-409-7")).Expected.Select(e => e.Act));
        Assert.Empty(Find(Numbered("50-00-0")).Expected);
        Assert.Equal("Reed oil", Find(Numbered("56-81-5")).ExtractName);
        Assert.Null(Find(Numbered("50-00-0")).ExtractName);
        Assert.Equal((true, true, false), (List.IsExtract("Reed oil"), List.IsExtract("REED OIL"), List.IsExtract("Glow")));
    }

    [Theory]
    [InlineData("glow thing", "Second Act")]
    [InlineData("dim glow", "")]
    [InlineData("Glowstuff", "")]
    public void A_group_is_asked_where_no_entry_is_found(string name, string act) =>
        Assert.Equal(act.Length == 0 ? [] : [act], Acts(Find(Named(name)).Groups));

    [Fact]
    public void A_group_is_not_asked_where_an_entry_is_found() =>
        Assert.Empty(Find(new SubstanceIdentity("glow thing", CasNumber.Parse("50-00-0").Value, null)).Groups);

    [Fact]
    public void The_numbers_of_a_substance_are_those_of_the_lists()
    {
        Assert.Equal(["64-17-5"], Find(Named("spirit")).CasNumbers);
        Assert.Equal(["120-57-0"], Find(Numbered(null, "204-409-7")).CasNumbers);
        Assert.Equal("204-409-7", Assert.Single(List.Meant(Numbered("120-57-0"))).Ec!.Text);
        Assert.Equal("200-001-8", Assert.Single(List.Meant(Numbered("120-57-0", "200-001-8"))).Ec!.Text);
        Assert.Equal("50-00-0", List.KnownAs(Numbered(null, "200-001-8"))!.Cas);
        Assert.Equal("64-17-5", List.KnownAs(Numbered("64-17-5", "200-001-8"))!.Cas);
        Assert.Null(List.KnownAs(Named("spirit")));
        Assert.Equal(["56-81-5", "120-57-0"], List.Named("reed OIL").Select(k => k.Cas));
    }

    [Theory]
    [InlineData("50-00-0", "64-17-5", true)]
    [InlineData("50-00-0", "67-56-1", false)]
    [InlineData("67-56-1", "50-00-0", false)]
    public void Two_numbers_may_stand_in_one_entry(string cas, string other, bool stand) =>
        Assert.Equal(stand, List.StandInOneEntry(cas, other));

    [Fact]
    public void An_empty_list_knows_nothing()
    {
        Listing listing = SubstanceList.Empty.Find(Numbered("50-00-0"), DateOnly.MaxValue, UpToSecond with { UpTo = "" });
        Assert.Empty(listing.Entries);
        Assert.Null(listing.Known);
        Assert.Null(SubstanceList.Empty.Table);
    }
}
