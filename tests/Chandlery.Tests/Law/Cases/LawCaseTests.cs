using Chandlery.Core.Labelled;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law.Cases;

/// <summary>The cases that stand beside the rows of the law, in <c>data/law/&lt;edition&gt;/cases.yaml</c>.</summary>
public sealed class LawCaseTests
{
    [Fact]
    public void Every_case_can_be_read() => Assert.True(CaseFiles.Problems.None, string.Join("\n", CaseFiles.Problems.Found));

    [Theory(DisplayName = "Law")]
    [LawCases]
    [Outside("the source that stands beside each case; CheckCount tells those from memory apart")]
    public void The_law_gives_what_the_case_says(CaseName name)
    {
        LawCase asked = CaseFiles.Cases.First(c => c.Name.Equals(name));
        var answer = new CaseAnswer(asked);
        string[] differences = [.. asked.Then.Select(t => t.DifferenceFrom(answer)).OfType<string>()];
        Assert.True(
            differences.Length == 0,
            $"{asked.Place}: {string.Join("; ", differences)}. {(asked.IsFromMemory ? "From memory" : "Source")}: {asked.Source}"
        );
        Assert.All(answer.Verdict.Label.All, (LabelChoice c) => Assert.NotEmpty(c.Because));
    }
}
