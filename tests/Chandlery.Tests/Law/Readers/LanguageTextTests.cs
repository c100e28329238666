namespace Chandlery.Tests.Law.Readers;

/// <summary>Texts of a language: none is empty, and none is another thing than a text.</summary>
public sealed class LanguageTextTests
{
    [Theory]
    [InlineData("words.yaml", "heat: Tenu malvarma.", "heat: \"\"", "7:16: 'heat' must be a text.")]
    [InlineData("words.yaml", "heat: Tenu malvarma.", "heat: [Tenu]", "7:16: 'heat' must be a text.")]
    [InlineData("kinds.yaml", "away: Tenu for.", "away: \"\"", "5:17: 'away' must be a text.")]
    [InlineData("statements.yaml", "H317: Povas ruĝigi vangojn.", "H317: \"\"", "6:9: 'H317' must be a text.")]
    [InlineData("statements.yaml", "H317: Povas ruĝigi vangojn.", "H31: Povas.", "6:3: There is no statement 'H31'. Did you mean 'H317'?")]
    [InlineData(
        "statements.yaml",
        "EUH208: Enhavas {names}.",
        "EUH208: Enhavas.",
        "9:3: EUH208 must say where the names of the substances go. Write it under 'printed' with {names} in their place."
    )]
    [InlineData("words.yaml", "{hours}", "{days}", "7:39: 'smoke' must have the same marks as its English text. It needs: {hours}.")]
    [InlineData(
        "kinds.yaml",
        "Tenu for.",
        "\"Tenu {it} for.\"",
        "5:17: 'away' must have the same marks as its English text. It needs: none."
    )]
    [InlineData("words.yaml", "decimal: \",\"", "decimal: \";\"", "5:20: 'decimal: ;' is not known. Write one of: ., ,.")]
    [InlineData(
        "safety-data-sheet.yaml",
        "told: { \"{0} is not known.\": \"{0} ne estas konata.\" }",
        "told: nothing",
        "6:7: 'told' must be a group of fields."
    )]
    public void A_text_that_is_wrong_is_refused_with_its_place(string file, string from, string to, string says)
    {
        string path = "languages/eo/" + file;
        var texts = new Dictionary<string, string>(InventedLaw.Texts.ToDictionary());
        Assert.Contains(from, texts[path], StringComparison.Ordinal);
        texts[path] = texts[path].Replace(from, to, StringComparison.Ordinal);
        Assert.Equal($"data/{path}:{says}", $"{Assert.Single(InventedLaw.Read(texts).Problems.Found)}");
    }
}
