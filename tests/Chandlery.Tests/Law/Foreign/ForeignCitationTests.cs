using System.Text.RegularExpressions;
using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Tests.Paper;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Foreign;

/// <summary>Everything that is printed for a place cites that place's law only.</summary>
public sealed class ForeignCitationTests
{
    // One of each edition, in English where one of its places speaks it, as our citations do.
    private static readonly IReadOnlyList<Place> OfEditions =
    [
        .. TestLaw
            .Lawbook.Places.GroupBy(p => p.EditionId)
            .Select(g => g.FirstOrDefault(p => p.Languages is [{ Text: "en" }]) ?? g.First()),
    ];

    // Places that share an edition and have rows of their own in the law on product safety.
    private static readonly IReadOnlyList<Place> WithRowsOfTheirOwn = [.. TestLaw.Lawbook.Places.Except(OfEditions).Where(HasRowsOfItsOwn)];

    private static bool HasRowsOfItsOwn(Place place)
    {
        ProductSafetyLaw law = TestLaw.Lawbook.Safety;
        IEnumerable<string> named = (law.For(law.Packagings, place.Code)?.Marks ?? [])
            .SelectMany(m => m.SoldIn)
            .Concat((law.For(law.Duties, place.Code)?.Rows ?? []).SelectMany(r => r.SoldIn));
        return named.Contains(place.Code.Text);
    }

    public static TheoryData<string, string> Goods()
    {
        var data = new TheoryData<string, string>();
        foreach (Place place in OfEditions)
        {
            foreach (string id in DemoGoods.Ids)
            {
                data.Add(place.Code.Text, id);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Goods))]
    public void No_paper_cites_the_law_of_another_place(string code, string id)
    {
        Place place = TestLaw.Lawbook.FindPlace(code)!;
        (Assessment? a, IReadOnlyList<Problem> problems) = DemoGoods.At(id, place);
        if (a is null)
        {
            // A label in words that are not the law's own would not do (Norway), so nothing is printed; what is said instead is read.
            Assert.NotEmpty(problems);
            Assert.Contains(place.Languages, l => TestLaw.Lawbook.WithoutTexts.ContainsKey(l));
            HoldsNothingForeign(place, [("refusal", string.Join('\n', problems.Select(PrintedTexts.Said)))]);
            return;
        }

        var texts = new PrintedTexts(a, place, DemoGoods.Catalogue);
        HoldsNothingForeign(place, [.. texts.Answers(), .. texts.Papers(), .. texts.SafetyFiles()]);

        // Arrangements and what is measured on a label cite the edition's rules on labels, and a recall those of the place, whatever the
        // kind: of the other kinds the label is read, and is not laid out a second and drawn for measuring.
        if (a.Kind.Id == ProductKind.Usual)
        {
            HoldsNothingForeign(place, texts.Measured().Concat(texts.Recall()));
        }
    }

    [Fact]
    public void No_paper_of_a_place_with_rows_of_its_own_cites_those_of_its_neighbours()
    {
        Assert.Contains("FR", WithRowsOfTheirOwn.Select(p => p.Code.Text));
        foreach (Place place in WithRowsOfTheirOwn)
        {
            // The rest is the edition's, and is read at the edition's place.
            var texts = new PrintedTexts(DemoGoods.At("fig-tin", place).Assessment!, place, DemoGoods.Catalogue);
            HoldsNothingForeign(place, texts.SafetyFiles().Concat(texts.Recall()));
        }
    }

    public static TheoryData<string> Places() => [.. OfEditions.Select(p => p.Code.Text)];

    [Theory]
    [MemberData(nameof(Places))]
    public void No_gift_set_cites_the_law_of_another_place(string code)
    {
        Place place = TestLaw.Lawbook.FindPlace(code)!;
        HoldsNothingForeign(place, PrintedTexts.OfSets(place, DemoGoods.Catalogue));
    }

    [Fact]
    public void Every_law_has_signs_by_which_it_is_told() =>
        Assert.Equal(TestLaw.Lawbook.Editions.Codes.Order(StringComparer.Ordinal), LawSigns.Of.Keys.Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Places))]
    public void A_citation_of_any_other_law_is_found(string code)
    {
        Place place = TestLaw.Lawbook.FindPlace(code)!;
        foreach ((string edition, (_, string sample)) in LawSigns.Of)
        {
            bool isOwn = edition == place.EditionId || LawSigns.IsShared(edition, place.EditionId);
            string text = $"The figures are five high\n({sample}).";
            Assert.Equal(sample.Length > 0 && !isOwn, Foreign(place, [("planted", text)]).Any());
        }
    }

    [Fact]
    public void A_citation_that_a_paper_prints_is_found()
    {
        Place place = TestLaw.Lawbook.FindPlace("IE")!;
        Assessment a = DemoGoods.At("slate-jar", place).Assessment!;
        foreach (string name in new[] { "Slate Jar", "Slate SANS 10234 Jar" })
        {
            var texts = new PrintedTexts(a with { Candle = a.Candle with { Name = name } }, place, DemoGoods.Catalogue);
            IEnumerable<string> found = Foreign(place, texts.Papers());
            string[] where = [.. found.Select(f => f.Split(' ')[0]).Distinct()];
            Assert.Equal(name.Contains("SANS", StringComparison.Ordinal), where.Contains("label"));
            Assert.Equal(name.Contains("SANS", StringComparison.Ordinal), where.Contains("technical-file"));
        }
    }

    // Texts are read from what is drawn, since reading them back from hundreds of PDFs takes minutes: this holds that it is the same.
    [Theory]
    [InlineData("label")]
    [InlineData("safety-sheet")]
    [InlineData("technical-file")]
    public void What_is_read_is_what_the_PDF_holds(string paper)
    {
        MadePaper made = TestLaw.Made(paper, DemoGoods.At("harbour-bowl", TestLaw.Lawbook.FindPlace("GB")!).Assessment!);
        using var reader = new PdfReader(PdfDrawing.Draw(made.Document));
        string read = LawSigns.Joined(PrintedTexts.TextOf(made.Document));
        IEnumerable<string> words = Enumerable.Range(0, reader.Pages.Count).SelectMany(p => reader.Text(p).Split(' '));
        string[] lost = [.. words.Where(w => w.Length > 0 && !read.Contains(w, StringComparison.Ordinal))];
        Assert.True(lost.Length == 0, string.Join('\n', lost));
    }

    private static void HoldsNothingForeign(Place place, IEnumerable<(string What, string Text)> texts)
    {
        List<string> found = [.. Foreign(place, texts)];
        Assert.True(found.Count == 0, $"{found.Count}:\n" + string.Join('\n', found.Distinct().Take(30)));
    }

    // Candidates are shown with what stands around them.
    private static IEnumerable<string> Foreign(Place place, IEnumerable<(string What, string Text)> texts)
    {
        Regex foreign = LawSigns.ForeignAt(place.Code, place.EditionId);
        string[] own = [.. Own(place, TestLaw.Lawbook.Edition(place.EditionId)).OrderByDescending(t => t.Length)];
        foreach ((string what, string text) in texts)
        {
            string plain = own.Aggregate(LawSigns.Joined(text), (t, said) => t.Replace(said, "", StringComparison.Ordinal));
            foreach (Match m in foreign.Matches(plain))
            {
                yield return $"{what}: ...{plain[Math.Max(0, m.Index - 60)..Math.Min(plain.Length, m.Index + 60)]}...";
            }
        }
    }

    // The law's own name, and what an edition says of itself, may say where it comes from.
    private static IEnumerable<string> Own(Place place, Edition edition) =>
        edition
            .Sources.Concat(edition.Covers)
            .Concat(edition.DoesNotCover)
            .SelectMany(t => TestLaw.Lawbook.Kinds.Select(k => k.Say(t)).Append(t))
            .SelectMany(t => new[] { t, Apostrophes.In(t) })
            .Concat([edition.Name, $"sold in {place.Name}"])
            .Distinct();
}
