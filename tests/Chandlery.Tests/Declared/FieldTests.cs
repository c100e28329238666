using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Paper.Papers;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Tests.Declared;

/// <summary>How fields are taken from a map.</summary>
public sealed class FieldTests
{
    private static Fields Of(string yaml, Problems problems) => new(YamlText.Read(yaml, "test.yaml", problems)!, problems);

    [Theory]
    [InlineData("0.1", 0.1)]
    [InlineData("0.12345678901234567", 0.12345678901234567)]
    [InlineData("33.333333333333336", 33.333333333333336)]
    public void A_number_is_read_to_its_last_figure(string written, double expected)
    {
        var problems = new Problems();
        Assert.Equal(expected, Of($"share: {written}", problems).Number("share", 0, 100, "1"));
        Assert.Empty(problems.Found);
    }

    [Theory]
    [InlineData("0.123456789012345678")]
    [InlineData("1e3")]
    [InlineData("1,5")]
    public void What_is_no_plain_number_is_refused(string written)
    {
        var problems = new Problems();
        Of($"share: '{written}'", problems).Number("share", 0, 100, "1");
        Assert.Contains("must be a number", Assert.Single(problems.Found).What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 100, true, false, "-1", "it must be 0 or more and at most 100.")]
    [InlineData(0, 100, false, false, "0", "it must be above 0 and at most 100.")]
    [InlineData(1, 200, true, true, "1.5", "it must be a whole number, 1 or more and at most 200.")]
    [InlineData(0, 10_000_000, false, false, "10000001", "it must be above 0 and at most 10000000.")]
    public void Bounds_are_said_in_words(double low, double high, bool lowAllowed, bool whole, string written, string said)
    {
        var problems = new Problems();
        Of($"value: {written}", problems).Number(new NumberField("value", "", "5", low, high) { LowAllowed = lowAllowed, Whole = whole });
        Assert.EndsWith(said, Assert.Single(problems.Found).What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("name: x", "'size' is missing.")]
    [InlineData("{ name: x, size: 5 }", "'size' must be a group of fields.")]
    public void A_group_that_is_missing_is_said_once_and_not_its_fields(string yaml, string said)
    {
        var problems = new Problems();
        Fields fields = Of(yaml, problems);
        fields.Text("name", "x");
        Fields size = fields.Group("size", "{ heightMm: 90 }");
        size.Number("heightMm", 0, 100, "90");
        size.Group("inner", "{ }").Text("word", "x");
        size.Done();
        fields.Done();
        Assert.Equal(said, Assert.Single(problems.Found).What);
    }

    [Theory]
    [InlineData("law/eu-clp/precautions.yaml", "limit")]
    [InlineData("law/eu-clp/label-elements.yaml", "naming")]
    [InlineData("law/eu-clp/label-format.yaml", "quantityFigures")]
    [InlineData("law/eu-clp/safety-sheet.yaml", "duty")]
    [InlineData("law/eu-clp/safety-sheet.yaml", "transport")]
    [InlineData("burning.yaml", "distanceBetweenCandlesCm")]
    [InlineData("burning.yaml", "longestBurnHours")]
    public void A_group_that_the_law_data_lack_is_named(string file, string group)
    {
        var problems = new Problems();
        Dictionary<string, string> files = new(ShippedFiles.Data(null, problems));
        List<string> kept = [];
        bool inside = false;
        foreach (string line in files[file].Split('\n'))
        {
            inside = inside ? line.Length == 0 || line[0] is ' ' or '#' : line.StartsWith(group + ":", StringComparison.Ordinal);
            kept.AddRange(inside ? [] : [line]);
        }

        Assert.NotEqual(files[file].Split('\n').Length, kept.Count);
        files[file] = string.Join('\n', kept);
        Assert.Null(LawReader.Read(files, PaperList.Own.Ids, problems));
        Assert.All(problems.Found, p => Assert.Equal($"'{group}' is missing.", p.What));
        Assert.NotEmpty(problems.Found);
    }
}
