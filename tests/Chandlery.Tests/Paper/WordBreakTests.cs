using System.Text.RegularExpressions;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Law.Reading;
using Chandlery.Files;
using Chandlery.Paper.Blocks;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Fonts;
using Chandlery.Paper.Layout;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Proofs;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;
using UglyToad.PdfPig;

namespace Chandlery.Tests.Paper;

/// <summary>Long words are broken where their language allows it, and the law's text stays what it is.</summary>
public sealed partial class WordBreakTests
{
    private const int LongLetters = 13;
    private const string NoPatterns = "mt";

    public static TheoryData<string> Languages() => [.. TestLaw.Lawbook.Languages.Select(l => l.Code)];

    [Theory]
    [MemberData(nameof(Languages))]
    public void Every_long_word_is_known(string code)
    {
        Language language = TestLaw.Lawbook.FindLanguage(code)!;
        HashSet<string> known = new(language.Breaks.Words, StringComparer.OrdinalIgnoreCase);
        IEnumerable<string> texts = language
            .Official.Values.Concat(language.Printed.Values)
            .Concat(language.ForEyes.Values)
            .Concat(language.Words.Values)
            .Concat(language.Safety.Values);
        string[] unknown =
        [
            .. texts
                .SelectMany(t => Word().Matches(Mark().Replace(t, " ")))
                .Select(m => m.Value)
                .Where(w => w.Length >= LongLetters && !known.Contains(w))
                .Distinct(),
        ];
        Assert.True(unknown.Length == 0, $"data/languages/{code}/breaks.yaml lacks: {string.Join(", ", unknown)}");
    }

    [Outside(
        "The TeX hyphenation patterns (hyph-utf8) for 24 languages, applied by a machine; they do not see every seam of a compound, and those that they miss are listed word by word in hyphenation.tsv"
    )]
    [Fact]
    public void Words_break_where_other_patterns_break_them_or_at_the_seam_of_a_compound()
    {
        var wrong = new List<string>();
        int compared = 0;
        foreach (string[] row in TestFile.Lines("Data/hyphenation.tsv").Select(l => l.Split('\t')))
        {
            string whole = row[1].Replace("-", "", StringComparison.Ordinal);
            HashSet<int> allowed = [.. Places(row[1], '-'), .. Places(row[2], '-')];
            string ours = TestLaw.Lawbook.FindLanguage(row[0])!.Breaks.In(whole);
            compared++;
            if (ours == whole || !Places(ours, WordBreaks.Soft).All(allowed.Contains))
            {
                wrong.Add($"{row[0]} {ours.Replace(WordBreaks.Soft, '-')} beside {row[1]}");
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.Equal(TestLaw.Lawbook.Languages.Where(l => l.Code != NoPatterns).Sum(l => l.Breaks.Words.Count), compared);
    }

    [Theory]
    [InlineData("Kann allergische Hautreaktionen verursachen.", "Kann allergische Haut|reak|tionen verursachen.")]
    [InlineData("HAUTREAKTIONEN", "HAUT|REAK|TIONEN")]
    [InlineData("2-Hautreaktionen-4-ol, Hautreaktionen7", "2-Hautreaktionen-4-ol, Hautreaktionen7")]
    [InlineData("Hautreaktionenöl UFI: VDU1-414F-1003-1862 +999 20 555 014", "Hautreaktionenöl UFI: VDU1-414F-1003-1862 +999 20 555 014")]
    [InlineData("", "")]
    public void Only_whole_words_of_the_list_are_marked(string text, string marked) =>
        Assert.Equal(marked, TestLaw.Lawbook.FindLanguage("de")!.Breaks.In(text).Replace(WordBreaks.Soft, '|'));

    [Theory]
    [InlineData("ha-utreaktionen")]
    [InlineData("hautreaktionen")]
    [InlineData("haut-reaktionen-2")]
    public void A_break_that_leaves_too_little_is_refused(string word)
    {
        const string path = "languages/de/breaks.yaml";
        var texts = new Dictionary<string, string>(ShippedFiles.Data(null, new Problems()));
        texts[path] = texts[path].Replace("haut-reak-tionen", word, StringComparison.Ordinal);
        var problems = new Problems();
        Assert.Null(LawReader.Read(texts, PaperList.Own.Ids, problems));
        Problem problem = Assert.Single(problems.Found);
        Assert.Equal("data/" + path, problem.Place.File);
        Assert.Contains(word, problem.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_broken_word_has_its_hyphen_at_the_end_of_the_line_alone()
    {
        string text = TestLaw.Lawbook.FindLanguage("de")!.Breaks.In("Verursacht Hautreizungen.");
        List<Piece> pieces = LineBreaker.Pieces([new Span(text, Weight.Regular)]);
        Assert.Equal(["Verursacht", "Haut", "reizungen."], pieces.Select(p => p.Text));
        double wanted = pieces[0].WidthEm + pieces[1].WidthEm + Face.Of(Weight.Regular).BlankWidth + Face.Of(Weight.Regular).HyphenWidth;
        Assert.Equal(2, LineBreaker.Fill(pieces, 0, wanted + 0.001, 1, out _));
        Assert.Equal(1, LineBreaker.Fill(pieces, 0, wanted - 0.001, 1, out _));
        ShapedText line = Face.Of(Weight.Regular).Shape("Haut" + WordBreaks.Soft);
        Assert.Equal(Face.Of(Weight.Regular).Shape("Haut-").Glyphs, line.Glyphs);
        Assert.Equal("Haut" + WordBreaks.Soft, line.Text);
    }

    // On a tin the law's size is asked for "if possible", so that narrow labels may be tried.
    [Theory]
    [InlineData("DE")]
    [InlineData("FI")]
    public void Narrow_labels_get_larger_text_or_hold_it_at_all(string place)
    {
        Assessment a = OnATin(place);
        Assessment whole = a with { Languages = [.. a.Languages.Select(l => l with { Breaks = WordBreaks.None })] };
        int better = 0;
        foreach ((int width, int height) in NarrowSizes)
        {
            double with = Fitted(a, width, height)?.XHeight.Value ?? 0;
            double without = Fitted(whole, width, height)?.XHeight.Value ?? 0;
            Assert.True(with >= without, $"{width} x {height} mm: {with} beside {without}");
            better += with > without ? 1 : 0;
        }

        Assert.True(better > 0);
    }

    [Outside(
        "poppler, MuPDF (Debian) and PdfPig read a narrow label; beside it the law's German and Finnish text, whose hash is that of the act"
    )]
    [NeedsToolFact("pdftotext", "mutool")]
    public void Three_readers_give_the_laws_text_of_a_label_with_broken_words()
    {
        foreach (string place in new[] { "DE", "FI" })
        {
            Assessment a = OnATin(place);
            FittedLabel label = NarrowSizes.Select(s => Fitted(a, s.Width, s.Height)).OfType<FittedLabel>().First(HasBrokenWord);
            byte[] pdf = PdfDrawing.Draw(new PaperDocument("t", a.Languages[0].Code, label.Pages));
            using var tool = new Tool();
            string file = tool.Write("narrow.pdf", pdf);
            using PdfDocument read = PdfDocument.Open(pdf);
            string[] texts =
            [
                tool.Run("pdftotext", "-raw", file, "-"),
                tool.Run("mutool", "draw", "-F", "txt", file),
                string.Concat(read.GetPage(1).Letters.Select(l => l.Value)),
            ];
            foreach (string text in texts)
            {
                foreach (Language language in a.Languages)
                {
                    foreach (StatementChoice choice in a.Label.Hazard.Concat(a.Label.Precautionary))
                    {
                        Assert.Contains(
                            Squeezed(StatementText.Printed(language, choice.Code, a.Label)),
                            Squeezed(text),
                            StringComparison.Ordinal
                        );
                    }
                }
            }

            Assert.All(LabelInspector.Inspect(MeasuredPage.ReadOwn(pdf), a, new HashSet<string>()), i => Assert.True(i.Holds, i.What));
        }
    }

    [Theory]
    [InlineData("pocket-card")]
    [InlineData("burn-card")]
    [InlineData("shop-card")]
    public void CardsBreakLongWordsOnlyWhereTheirLanguageMayAndSayTheSame(string kind)
    {
        var broken = new List<string>();
        foreach (string place in new[] { "AT", "DK", "FI", "GR", "NL", "PL", "SE" })
        {
            Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml", place);
            PaperDocument card = TestLaw.Made(kind, a).Document;
            foreach ((Scene page, Language language) in card.Pages.Zip(a.Languages))
            {
                List<string> runs = [.. page.All.OfType<TextItem>().Select(t => t.Shaped.Text)];
                Assert.Contains(Squeezed(language.Safety["attended"]), Squeezed(string.Concat(runs)), StringComparison.Ordinal);
                foreach ((string end, string next) in runs.Zip(runs.Skip(1)).Where(r => r.First.EndsWith(WordBreaks.Soft)))
                {
                    string word = end.Split(' ')[^1].TrimEnd(WordBreaks.Soft) + new string([.. next.TakeWhile(char.IsLetter)]);
                    Assert.Contains(language.Breaks.Words, w => w.Equals(word, StringComparison.OrdinalIgnoreCase));
                    broken.Add(word);
                }
            }
        }

        if (kind == "pocket-card")
        {
            Assert.Contains("unbeaufsichtigt", broken);
        }
    }

    private static Assessment OnATin(string place) =>
        TestLaw.Demo("candles/harbour-bowl.yaml", place) with
        {
            Vessel = TestLaw.Demo("candles/fig-tin.yaml").Vessel,
        };

    private static IEnumerable<(int Width, int Height)> NarrowSizes =>
        from width in new[] { 40, 44, 48, 52 }
        from height in new[] { 90, 110, 130, 150, 170, 190 }
        select (width, height);

    private static FittedLabel? Fitted(Assessment a, double width, double height) =>
        TestLabels.Make(a, TestLabels.Ask(LabelForm.Rectangle, width, height)).Fitted;

    private static bool HasBrokenWord(FittedLabel label) =>
        label.Scene.All.OfType<TextItem>().Any(t => t.Shaped.Text.EndsWith(WordBreaks.Soft));

    private static string Squeezed(string text) => new([.. text.Where(c => !char.IsWhiteSpace(c) && c != WordBreaks.Soft)]);

    private static IEnumerable<int> Places(string word, char mark)
    {
        int letters = 0;
        foreach (char sign in word)
        {
            if (sign == mark)
            {
                yield return letters;
            }
            else
            {
                letters++;
            }
        }
    }

    [GeneratedRegex(@"[^\W\d_]+")]
    private static partial Regex Word();

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Mark();
}
