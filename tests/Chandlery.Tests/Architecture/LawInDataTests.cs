using System.Text.RegularExpressions;

namespace Chandlery.Tests.Architecture;

/// <summary>No clause of any law is a literal in the program: clauses are data, so that each place cites its own.</summary>
public sealed partial class LawInDataTests
{
    [Fact]
    public void No_clause_is_a_literal_in_the_source()
    {
        IEnumerable<string> found =
            from file in SourceFiles.All
            from line in SourceFiles.Code(file.Text)
            from literal in Literal().Matches(line.Text)
            where Clause().IsMatch(literal.Value)
            select $"{file.Path}:{line.Line}: {literal.Value}";
        string[] all = [.. found];
        Assert.True(all.Length == 0, string.Join('\n', all));
    }

    [Theory]
    [InlineData("CLP Art. 17(2)", true)]
    [InlineData("REACH Annex XVII, entries 28 to 30", true)]
    [InlineData("29 CFR 1910.1200, Appendix A", true)]
    [InlineData("Regulation (EU) 2024/2865", true)]
    [InlineData("15 U.S.C. 1261", true)]
    [InlineData("UN GHS Table 3.1.1", true)]
    [InlineData("the document and its clause", false)]
    [InlineData("GHS07", false)]
    [InlineData("an article number", false)]
    public void The_search_tells_clauses_from_words(string text, bool isClause) => Assert.Equal(isClause, Clause().IsMatch(text));

    [GeneratedRegex("\"(?:[^\"\\\\]|\\\\.)*\"")]
    private static partial Regex Literal();

    [GeneratedRegex(
        @"\b(?:CLP|REACH|GPSR)\b.*\b(?:Art\.|Annex|Table)|\bArt\. ?[0-9]|\bAnnex [IVX]+\b|[0-9]+ (?:CFR|U\.S\.C\.)|\((?:EU|EC)\) (?:No )?[0-9]|[0-9]+/[0-9]+/(?:EEC|EC|EU)\b|\bGHS (?:[0-9]|Table|Annex)|ASTM F[0-9]|\bEN 1[0-9]{4}|SANS [0-9]|\bregulation 14"
    )]
    private static partial Regex Clause();
}
