using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Tests.Law.Readers;

namespace Chandlery.Tests.Law.Records;

/// <summary>The text of a statement as a label prints it.</summary>
public sealed class StatementTextTests
{
    private static readonly Language English = InventedLaw.Read().FindLanguage("en")!;

    [Theory]
    [InlineData("Wilts reeds", "Wilts reeds.")]
    [InlineData("Wilts reeds.", "Wilts reeds.")]
    [InlineData("Wilts reeds .", "Wilts reeds.")]
    [InlineData("Wilts reeds!", "Wilts reeds!")]
    [InlineData("Who wilts?", "Who wilts?")]
    [InlineData("Wilts:", "Wilts:")]
    [InlineData("Contains <name>. May wilt", "Contains. May wilt.")]
    [InlineData("Wilts <what> <how>", "Wilts.")]
    [InlineData("Wilts <what> reeds", "Wilts reeds.")]
    public void Blanks_are_left_out_and_a_sentence_ends(string text, string printed) =>
        Assert.Equal(printed, (English with { Official = One(text) }).Statement(StatementCode.Of("H400")));

    [Theory]
    [InlineData("EUH208", Protection.None, "Holds {names}. May make cheeks blush.")]
    [InlineData("EUH208", Protection.Hands, "Holds {names}. May make cheeks blush.")]
    [InlineData("P280", Protection.None, "Wear a hat.")]
    [InlineData("P280", Protection.Hands, "Wear a hat.")]
    [InlineData("P280", Protection.Eyes, "Wear spectacles.")]
    [InlineData("P280", Protection.Eyes | Protection.Hands, "Wear a hat.")]
    [InlineData("P202", Protection.Eyes, "Read before use.")]
    [InlineData("H201", Protection.None, null)]
    [InlineData("H201", Protection.Eyes, null)]
    public void What_protects_the_eyes_alone_says_so(string code, Protection protects, string? text) =>
        Assert.Equal(text, English.Statement(StatementCode.Of(code), protects));

    [Theory]
    [InlineData("P101", "hearsay", false)]
    [InlineData("P202", "the invented act", true)]
    [InlineData("H400", "the invented act", true)]
    public void A_text_that_comes_from_elsewhere_says_so(string code, string source, bool isVerified)
    {
        TextOrigin origin = English.OriginOf(StatementCode.Of(code));
        Assert.Equal((source, isVerified), (origin.Source, origin.IsVerified));
    }

    [Fact]
    public void A_place_changes_our_words_and_not_the_laws()
    {
        Language there = English.With(new LocalWords(new Dictionary<string, string> { ["cool"] = "cold", ["cheeks"] = "chins" }));
        Assert.Equal("Keep cold.", there.Words["heat"]);
        Assert.Equal("Keep away.", there.Safety["away"]);
        Assert.Equal(English.Official, there.Official);
        Assert.Equal("cold", there.Local.In("cool"));
        Assert.Equal("Mind the cold.", (English with { Caution = "Mind the cool." }).With(there.Local).Caution);
        Assert.Equal("Keep cold.", (English with { Safety = English.Words }).With(there.Local).Safety["heat"]);
    }

    [Fact]
    public void An_edition_has_words_of_its_own_in_the_languages_that_it_names()
    {
        Lawbook lawbook = InventedLaw.Read();
        Assert.Equal("rushlight in a jar", lawbook.Edition("mainland").AsWritten(English).Words["jar"]);
        Assert.Equal("candle in a jar", lawbook.Edition("island").AsWritten(English).Words["jar"]);
        Assert.Equal("torĉo en vazo", lawbook.Edition("mainland").AsWritten(lawbook.FindLanguage("eo")!).Words["jar"]);
    }

    private static Dictionary<StatementCode, string> One(string text) => new() { [StatementCode.Of("H400")] = text };
}
