using Chandlery.Core.Asked.Comparisons;
using Chandlery.Paper.Templates;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

public class TemplateTests
{
    private static (string? Text, Problem? Problem) Write(string template, string name = "fig & tin <x>")
    {
        var problems = new Problems();
        var shelf = new TemplateShelf(new Dictionary<string, string> { ["t.sbn"] = template });
        string? text = shelf.Write("t.sbn", new Dictionary<string, object?> { ["name"] = name }, problems);
        return (text, problems.Found.Count > 0 ? problems.Found[0] : null);
    }

    [Fact]
    public void ValuesAreEscaped() => Assert.Equal("<p>fig &amp; tin &lt;x&gt;</p>", Write("<p>{{ name }}</p>").Text);

    [Theory]
    [InlineData("line one\n{{ nmae }}", 2, "nmae")]
    [InlineData("{{ for x in [1,2] }}", 1, "cannot be read")]
    [InlineData("{{ include 'other' }}", 1, "failed")]
    [InlineData("{{ for i in 1..30000 }}x{{ end }}", 1, "failed")]
    [InlineData("{{ func f; f; end; f }}", 1, "failed")]
    public void AMistakeHasItsPlaceAndEndsTheDocument(string template, int line, string expected)
    {
        (string? text, Problem? problem) = Write(template);
        Assert.Null(text);
        Assert.Equal("templates/t.sbn", problem!.Place.File);
        Assert.Equal(line, problem.Place.Line);
        Assert.Contains(expected, problem.What, StringComparison.Ordinal);
    }
}
