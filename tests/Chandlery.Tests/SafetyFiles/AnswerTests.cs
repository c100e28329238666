using Chandlery.Core.Assessed;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.SafetyFiles;

/// <summary>Questions on form and claims have consequences, and an open one is shown.</summary>
public sealed class AnswerTests
{
    private static IReadOnlyList<Finding> Findings(string answers, string place = "IE", DateOnly? day = null)
    {
        using var folder = new MakersFolder();
        folder.Change(
            "candles/fig-tin.yaml",
            "answers: { looksLikeFood: no, forChildren: no, glitter: no, metalCoreWick: no, claims: [] }",
            answers
        );
        return folder.Assess("fig-tin", place, day).Findings;
    }

    [Theory]
    [InlineData("looksLikeFood: yes, forChildren: no, glitter: no, metalCoreWick: no, claims: []", "Art. 6(1)(f)")]
    [InlineData("looksLikeFood: no, forChildren: yes, glitter: no, metalCoreWick: no, claims: []", "CLP Art. 35(2)")]
    [InlineData("looksLikeFood: no, forChildren: no, glitter: no, metalCoreWick: no, claims: [non-toxic]", "CLP Art. 25(4)")]
    [Outside("Regulation (EU) 2023/988, Art. 6(1)(f); CLP Art. 25(4) and 35(2), consolidated text of 1 May 2026")]
    public void What_the_law_forbids_stops_the_sale(string answers, string clause) =>
        Assert.Contains(
            Findings($"answers: {{ {answers} }}"),
            f => f.Gravity == Gravity.Stop && f.Clause.Text.Contains(clause, StringComparison.Ordinal)
        );

    [Fact]
    public void A_green_claim_is_looked_at_from_its_day_and_only_as_a_word()
    {
        const string Claims = "answers: {{ looksLikeFood: no, forChildren: no, glitter: no, metalCoreWick: no, claims: ['{0}'] }}";
        static bool Looked(IReadOnlyList<Finding> findings) => findings.Any(f => f.What.StartsWith("The claim", StringComparison.Ordinal));
        string With(string claim) => string.Format(System.Globalization.CultureInfo.InvariantCulture, Claims, claim);
        Assert.True(Looked(Findings(With("Eco and fair"))));
        Assert.False(Looked(Findings(With("Eco and fair"), day: new DateOnly(2026, 9, 26))));
        Assert.False(Looked(Findings(With("economy size"))));
    }

    [Fact]
    public void What_is_not_answered_is_named()
    {
        Finding open = Assert.Single(
            Findings("answers: { glitter: no }"),
            f => f.What.StartsWith("Not answered", StringComparison.Ordinal)
        );
        Assert.Contains("looksLikeFood, forChildren, metalCoreWick, claims", open.What, StringComparison.Ordinal);
        Assert.DoesNotContain(Findings("answers: { glitter: no }", "ZA"), f => f.What.StartsWith("Not answered", StringComparison.Ordinal));
    }
}
