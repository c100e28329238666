using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Tests.Law.Records;

/// <summary>Sentences of the program in another language: found whole, by their pattern, with their clause, or one by one.</summary>
public sealed class ToldSentenceTests
{
    private static readonly FigureFormat Comma = new(',');

    private static readonly ToldSentences Told = new(
        new Dictionary<string, string>
        {
            ["It glows."] = "Ĝi brilas.",
            ["It fades."] = "Ĝi paliĝas.",
            ["{0} glows."] = "{0} brilas.",
            ["{0} of {1} glows."] = "{1}: {0} brilas.",
            ["half"] = "duono",
        },
        new Dictionary<string, string> { ["Act"] = "Leĝo", ["Act 1"] = "Unua Leĝo" }
    );

    [Theory]
    [InlineData("It glows.", "Ĝi brilas.")]
    [InlineData("Wax glows.", "Wax brilas.")]
    [InlineData("half glows.", "duono brilas.")]
    [InlineData("half of Wax glows.", "Wax: duono brilas.")]
    [InlineData("1.5 of Wax glows.", "Wax: 1,5 brilas.")]
    [InlineData("C10-3.2.1 of Wax glows.", "Wax: C10-3.2.1 brilas.")]
    [InlineData("It glows. (Act 1)", "Ĝi brilas. (Unua Leĝo)")]
    [InlineData("It glows. It fades.", "Ĝi brilas. Ĝi paliĝas.")]
    [InlineData("It glows. It fades. It glows.", "Ĝi brilas. Ĝi paliĝas. Ĝi brilas.")]
    [InlineData("It hums.", null)]
    [InlineData("It hums. It fades.", null)]
    [InlineData("It hums. (Act 1)", null)]
    [InlineData("It hums. Nobody here glows.", null)]
    [InlineData("", null)]
    public void A_sentence_is_found_by_what_is_fixed_in_it(string text, string? told) => Assert.Equal(told, Told.Find(text, Comma));

    [Theory]
    [InlineData("Act 2", "Leĝo 2")]
    [InlineData("Act 1", "Unua Leĝo")]
    [InlineData("Act 12", "Leĝo 12")]
    [InlineData("The Acts", "The Acts")]
    [InlineData("half", "duono")]
    public void The_words_of_a_citation_are_told_the_longest_first(string clause, string told) => Assert.Equal(told, Told.Cited(clause));

    [Fact]
    public void None_knows_nothing() => Assert.Null(ToldSentences.None.Find("It glows.", Comma));
}
