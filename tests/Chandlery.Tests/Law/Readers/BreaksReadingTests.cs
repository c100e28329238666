using Chandlery.Core.Law;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Readers;

/// <summary>Which words a language may say that they can be broken.</summary>
public sealed class BreaksReadingTests
{
    private const string File = "languages/eo/breaks.yaml";

    private static (Lawbook? Lawbook, Problems Problems) Read(string word)
    {
        var texts = new Dictionary<string, string>(InventedLaw.Texts.ToDictionary());
        texts[File] = texts[File].Replace("kan-delo", word, StringComparison.Ordinal);
        return InventedLaw.Read(texts);
    }

    [Theory]
    [InlineData("kan-delo")]
    [InlineData("kan-del-ujo")]
    public void Parts_of_three_letters_and_more_are_taken(string word) =>
        Assert.Equal([word.Replace("-", "", StringComparison.Ordinal)], Read(word).Lawbook!.FindLanguage("eo")!.Breaks.Words);

    [Theory]
    [InlineData("kandelo")]
    [InlineData("ka-ndelo")]
    [InlineData("kande-lo")]
    [InlineData("kan-d1lo")]
    [InlineData("kan-delo-")]
    public void Other_words_are_refused(string word) =>
        Assert.Equal(
            $"data/{File}:4:9: '{word}' must be a word with a hyphen at each place where it may be broken. "
                + "Letters alone, and 3 at least before and behind each hyphen.",
            $"{Assert.Single(Read(word).Problems.Found)}"
        );
}
