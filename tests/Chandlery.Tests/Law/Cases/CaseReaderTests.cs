using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Cases;

/// <summary>A slip in a case is told with its place and a remedy; no case is passed over.</summary>
public sealed class CaseReaderTests
{
    private const string Good = """
        cases:
          - case: good
            given: [{ percent: 2, classes: [Skin Sens. 1B] }]
            then: { classes: [Skin Sens. 1B], statements: [H317], pictograms: [GHS07], signalWord: Warning, names: [s1] }
            source: a clause
        """;

    private static string[] Said(string text)
    {
        var problems = new Problems();
        CaseFiles.Reader.Read("eu-clp", "cases.yaml", text, problems);
        return [.. problems.Found.Select(p => p.ToString())];
    }

    [Fact]
    public void A_good_case_is_read_without_a_word() => Assert.Empty(Said(Good));

    [Theory]
    [InlineData("given:", "givn:", "cases.yaml:3:5: 'givn' is not a field that is known here. Did you mean 'given'?")]
    [InlineData("signalWord", "signalwrod", "cases.yaml:4:80: 'signalwrod' is not a field that is known here. Did you mean 'signalWord'?")]
    [InlineData("Warning", "Waring", "cases.yaml:4:92: 'signalWord: Waring' is not known. Write one of: none, Danger, Warning.")]
    [InlineData(
        "{ classes: [Skin Sens. 1B]",
        "{ classes: [Skin Sens 1B]",
        "cases.yaml:4:23: 'Skin Sens 1B' is no hazard of hazards.yaml. Did you mean 'Skin Sens. 1B'?"
    )]
    [InlineData("H317]", "H3177]", "cases.yaml:4:52: There is no statement 'H3177'. Did you mean 'H317'?")]
    [InlineData(
        "GHS07",
        "GHS70",
        "cases.yaml:4:72: 'GHS70' is not known in 'pictograms'. Write some of: GHS01, GHS02, GHS03, GHS04, GHS05, GHS06, GHS07, GHS08, GHS09."
    )]
    [InlineData("[s1]", "[s2]", "cases.yaml:4:109: 's2' is not known in 'names'. Write some of: s1.")]
    [InlineData("percent: 2", "percent: 101", "cases.yaml:3:24: 'percent' is 101: it must be above 0 and at most 100.")]
    [InlineData(
        ", classes: [Skin Sens. 1B] }]",
        " }]",
        "cases.yaml:3:13: 'classes' is missing. Write 'classes: [Skin Sens. 1B]', 'classes: not classified', or 'classes: unknown'."
    )]
    [InlineData(
        "source: a clause",
        "source: a clause (from memory)",
        "cases.yaml:5:13: What is from memory is no source. Write it under 'fromMemory'."
    )]
    [InlineData(
        "    source: a clause",
        "",
        "cases.yaml:2:5: A case has either a 'source' or 'fromMemory'. Write 'source: document, clause, edition'; where nobody has compared it with the text, 'fromMemory: why'."
    )]
    public void A_slip_is_told_with_its_place(string right, string wrong, string said)
    {
        string text = Good.Replace(right, wrong, StringComparison.Ordinal);
        Assert.NotEqual(Good, text);
        Assert.Contains(said, Said(text));
    }

    [Fact]
    public void A_case_that_expects_nothing_is_none() =>
        Assert.Equal(
            ["cases.yaml:4:11: The case expects nothing. Say at least what the classes are: 'classes: []' for none."],
            Said("cases:\n  - case: idle\n    given: [{ percent: 2, classes: unknown }]\n    then: {}\n    source: a clause\n")
        );

    [Fact]
    public void Two_cases_of_one_name_are_told()
    {
        string twice = Good + "\n" + string.Join("\n", Good.Split('\n').Skip(1));
        Assert.Equal(["cases.yaml:6:5: There is already a case 'good'. Give each case a name of its own."], Said(twice));
    }

    [Fact]
    public void More_than_a_hundred_percent_is_told() =>
        Assert.Equal(
            ["cases.yaml:3:12: The ingredients add up to 101 %. All in all there are 100 %."],
            Said(Good.Replace("source:", "undeclaredPercent: 99\n    source:", StringComparison.Ordinal))
        );
}
