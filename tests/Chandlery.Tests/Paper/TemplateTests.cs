using Chandlery.Core.Asked.Comparisons;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Templates;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

public class TemplateTests
{
    private sealed record NameView(string Name) : ITemplateView
    {
        public string Template => "t.sbn";

        public IEnumerable<(string Name, object? Value)> Values => [("name", Name)];
    }

    private static (string? Text, Problem? Problem) Write(string template, params (string Name, string Text)[] parts)
    {
        var problems = new Problems();
        var shelf = new TemplateShelf(parts.Append(("t.sbn", template)).ToDictionary(t => t.Item1, t => t.Item2));
        string? text = shelf.Write(new NameView("fig & tin <x>"), problems);
        return (text, problems.Found.Count > 0 ? problems.Found[0] : null);
    }

    [Fact]
    public void ValuesAreEscaped() => Assert.Equal("<p>fig &amp; tin &lt;x&gt;</p>", Write("<p>{{ name }}</p>").Text);

    [Fact]
    public void Every_group_of_the_librarys_functions_is_there_when_asked()
    {
        var ours = new FunctionsWhenAsked();
        foreach (string group in new Scriban.Functions.BuiltinFunctions().GetMembers())
        {
            Assert.True(ours.Contains(group), group);
            Assert.NotNull(ours[group]);
        }

        Assert.Equal("FIG | 2 | 1.5", Write("{{ 'fig' | string.upcase }} | {{ [1, 2] | array.size }} | {{ 1.46 | math.round 1 }}").Text);
    }

    [Fact]
    public void What_a_template_writes_into_a_group_ends_with_its_run()
    {
        Assert.Equal("1", Write("{{ math.own = 1; math.own }}").Text);
        Assert.NotNull(Write("{{ math.own }}").Problem);
    }

    [Theory]
    [InlineData("line one\n{{ nmae }}", 2, "nmae")]
    [InlineData("{{ for x in [1,2] }}", 1, "cannot be read")]
    [InlineData("{{ include 'other' }}", 1, "failed")]
    [InlineData("{{ for i in 1..30000 }}x{{ end }}", 1, "failed")]
    [InlineData("{{ func f; f; end; f }}", 1, "failed")]
    [InlineData("{{ include 't.sbn' }}", 1, "no part 't.sbn'")]
    [InlineData("\n\n{{ include '/etc/hostname' }}", 3, "no part '/etc/hostname'")]
    public void AMistakeHasItsPlaceAndEndsTheDocument(string template, int line, string expected)
    {
        (string? text, Problem? problem) = Write(template);
        Assert.Null(text);
        Assert.Equal("templates/t.sbn", problem!.Place.File);
        Assert.Equal(line, problem.Place.Line);
        Assert.Contains(expected, problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void AFunctionThatCallsItselfThreeTimesOnItsWayIsStopped()
    {
        (string? text, Problem? problem) = Write("{{ func f(n); if n > 0; f n - 1; f n - 1; f n - 1; end; end; f 18 }}");
        Assert.Null(text);
        Assert.Contains("was stopped after 5 s", problem!.What, StringComparison.Ordinal);
    }

    [Fact]
    public void APartSeesTheViewAndItsArguments() =>
        Assert.Equal(
            "<p size=\"2\">fig &amp; tin &lt;x&gt;</p>",
            Write("{{ include 'parts/p.sbn' 2 }}", ("parts/p.sbn", "<p size=\"{{ $1 }}\">{{ name }}</p>")).Text
        );

    [Theory]
    [InlineData("line one\n  {{ nmae }}", 2, 6, "nmae")]
    [InlineData("\n{{ for x in [1,2] }}", 2, 19, "cannot be read")]
    [InlineData("{{ include 'parts/p.sbn' }}", 1, 4, "recursive")]
    [InlineData("x {{ include 'parts/q.sbn' }}", 1, 6, "Parts: parts/p.sbn.")]
    public void AMistakeInAPartIsSaidAtItsOwnPlace(string part, int line, int column, string expected)
    {
        (string? text, Problem? problem) = Write("\n\n{{ include 'parts/p.sbn' }}", ("parts/p.sbn", part));
        Assert.Null(text);
        Assert.Equal("templates/parts/p.sbn", problem!.Place.File);
        Assert.Equal((line, column), (problem.Place.Line, problem.Place.Column));
        Assert.Contains(expected, problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void AValueThatATemplateCouldReachIntoIsRefused() =>
        Assert.Throws<ArgumentException>(() =>
            new TemplateShelf(new Dictionary<string, string> { ["t.sbn"] = "" }).Write(new OddView(), new Problems())
        );

    private sealed record OddView : ITemplateView
    {
        public string Template => "t.sbn";

        public IEnumerable<(string Name, object? Value)> Values => [("day", new DateOnly(2026, 11, 25))];
    }

    [Fact]
    public void AFolderOfTheUsersReplacesAPart()
    {
        string folder = Directory.CreateTempSubdirectory("chandlery-parts-").FullName;
        try
        {
            Directory.CreateDirectory(Path.Combine(folder, "parts"));
            File.WriteAllText(Path.Combine(folder, "parts", "messages.sbn"), "<p>{{ $1[0].text }} as we say it</p>");
            var problems = new Problems();
            PaperShop shop = ShippedShop.Open(ShippedFiles.Data(null, problems), folder, problems);
            Assert.Empty(problems.Found);
            PaperOutcome card = TestLaw.Make(PaperList.Own.Find("burn-card")!, TestLaw.Demo("candles/fig-tin.yaml"), shop);
            using var pdf = new PdfReader(PdfDrawing.Draw(Assert.IsType<MadePaper>(card).Document));
            Assert.Contains("Keep the candle out of draughts. as we say it", pdf.Text(), StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
