using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Readers;

/// <summary>Law that is read when it is first asked for: what every run needs is refused at once, the rest when it is wanted.</summary>
public sealed class AskedLawTests
{
    private static readonly string[] Papers = ["label", "tag"];

    private static (Lawbook? Lawbook, Problems Problems) Open(string file, string from, string to)
    {
        var texts = new Dictionary<string, string>(InventedLaw.Texts.ToDictionary());
        Assert.Contains(from, texts[file], StringComparison.Ordinal);
        texts[file] = texts[file].Replace(from, to, StringComparison.Ordinal);
        var problems = new Problems();
        return (LawReader.ReadWhenAsked(texts, Papers, problems), problems);
    }

    [Fact]
    public void What_every_run_needs_is_refused_at_once()
    {
        (Lawbook? lawbook, Problems problems) = Open("burning.yaml", "indoor: 11", "indoor: 0");
        Assert.Null(lawbook);
        Assert.Equal("data/burning.yaml:1:37: 'indoor' is 0: it must be above 0 and at most 1000.", $"{Assert.Single(problems.Found)}");
    }

    [Fact]
    public void Nothing_else_is_read_where_hazards_are_wrong()
    {
        (Lawbook? lawbook, Problems problems) = Open("law/hazards.yaml", "statement: H330", "statement: H331");
        Assert.Null(lawbook);
        Assert.Equal("data/law/hazards.yaml:23:93: There is no statement 'H331'. Did you mean 'H330'?", $"{Assert.Single(problems.Found)}");
    }

    [Fact]
    public void An_edition_that_is_wrong_is_refused_when_it_is_asked_for()
    {
        (Lawbook? lawbook, Problems problems) = Open("law/island/edition.yaml", "name: Candle Order of the Island\n", "");
        Assert.Empty(problems.Found);
        Assert.Equal("Mainland", lawbook!.FindPlace("MA")!.Name);
        Assert.Equal("mainland", lawbook.Edition("mainland").Id);
        Assert.Equal(
            "data/law/island/edition.yaml:2:1: 'name' is missing. Add it, such as 'name: the law's name'.",
            Assert.Throws<InvalidDataException>(() => lawbook.Edition("island")).Message
        );
    }

    [Fact]
    public void All_is_read_whole_where_all_is_asked_for()
    {
        Lawbook lawbook = InventedLaw.Read();
        Assert.Equal(["island", "mainland"], lawbook.Editions.Select(e => e.Id));
        Assert.Equal(["en", "eo"], lawbook.Languages.Select(l => l.Code));
        Assert.Equal(["jar", "stub"], lawbook.Kinds.Select(k => k.Id));
        Assert.Equal(["en", "eo"], lawbook.SheetWords.Select(w => w.Code));
        Assert.Equal(["mainland"], lawbook.Safety.Markets.Codes);
        Assert.Null(lawbook.Editions.Find("nowhere"));
    }

    [Fact]
    public void A_thing_of_a_shelf_is_read_once()
    {
        int read = 0;
        var shelf = new Shelf<string>(["a", "b"], code => $"{code}{++read}", new Lock());
        Assert.Equal(("b1", "a2", "b1", "a2"), (shelf.Find("b"), shelf[0], shelf[1], shelf.Find("a")));
        Assert.Equal(["a2", "b1"], shelf);
        shelf.ReadAll();
        Assert.Equal((2, 2, null), (read, shelf.Count, shelf.Find("c")));
        var unread = new Shelf<string>(["a", "b"], code => $"{code}{++read}", new Lock());
        unread.ReadAll();
        Assert.Equal(4, read);
    }
}
