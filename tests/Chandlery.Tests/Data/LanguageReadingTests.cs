using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;

namespace Chandlery.Tests.Data;

/// <summary>What a language must say: a slip would lose the names of substances or print a text as sure that is not.</summary>
public sealed class LanguageReadingTests
{
    [Theory]
    [InlineData(
        "hu/words.yaml",
        "A következőket tartalmazza: {names}.",
        "A következőket tartalmazza:",
        "'contains' must have the same marks as its English text. It needs: {names}."
    )]
    [InlineData(
        "hu/words.yaml",
        "legfeljebb {longestHours} h",
        "legfeljebb {hours} h",
        "'longestBurn' must have the same marks as its English text. It needs: {longestHours}."
    )]
    [InlineData(
        "hu/statements.yaml",
        "EUH208: \"{names}-t tartalmaz.",
        "EUH208: \"Allergént tartalmaz.",
        "EUH208 must say where the names of the substances go. Write it under 'printed' with {names} in their place."
    )]
    [InlineData("hu/statements.yaml", "codes: [EUH211]", "codes: [EUH221]", "There is no statement 'EUH221'. Did you mean 'EUH211'?")]
    [InlineData(
        "hu/safety-data-sheet.yaml",
        "{number}. SZAKASZ",
        "SZAKASZ",
        "'section' must have the same marks as its English text. It needs: {number}."
    )]
    public void A_slip_is_refused_with_its_place(string file, string from, string to, string expected)
    {
        string path = "languages/" + file;
        var texts = new Dictionary<string, string>(ShippedFiles.Data(null, new Problems()));
        Assert.Contains(from, texts[path], StringComparison.Ordinal);
        texts[path] = texts[path].Replace(from, to, StringComparison.Ordinal);
        var problems = new Problems();
        Assert.Null(LawReader.Read(texts, PaperList.Own.Ids, problems));
        Problem problem = Assert.Single(problems.Found);
        Assert.Equal("data/" + path, problem.Place.File);
        Assert.Equal(expected, $"{problem.What} {problem.Remedy}");
    }
}
