using System.Text;
using Chandlery.Cli;
using Chandlery.Core.Asked.Ceilings;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Law.ProductSafety;
using Chandlery.Core.SafetyFiles;
using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Core.SafetyFiles.Incidents;
using Chandlery.Core.SafetyFiles.Listings;
using Chandlery.Core.SafetyFiles.Quantities;
using Chandlery.Core.SafetyFiles.Recalls;
using Chandlery.Core.SafetyFiles.Records;
using Chandlery.Core.SafetyFiles.Tests;
using Chandlery.Files;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Papers.LabelSheets;
using Chandlery.Paper.Papers.LoadPlots;
using Chandlery.Paper.Papers.Recalls;
using Chandlery.Paper.Papers.Records;
using Chandlery.Paper.Proofs;
using Chandlery.Paper.Scenes;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law.Foreign;

/// <summary>All that is said and printed of a product at a place, as texts with what they are.</summary>
/// <param name="a">The product.</param>
/// <param name="place">The place.</param>
/// <param name="catalogue">All that the maker declares.</param>
internal sealed class PrintedTexts(Assessment a, Place place, Catalogue catalogue)
{
    private const string Danger = "It can crack.";

    private static readonly Stock Stock = StockShelf.Find("a4-2x2", new Problems())!;
    private readonly Wax wax = catalogue.Find<Wax>(a.Candle.Wax, new Problems())!;
    private readonly ProductSafetyLaw safety = TestLaw.Lawbook.Safety;
    private readonly Problems problems = new();

    /// <summary>What the program answers.</summary>
    public IEnumerable<(string What, string Text)> Answers()
    {
        yield return ("assessment", AssessmentText.Render(a, 140, Chandlery.Cli.Ink.None));
        yield return ("JSON", AssessmentJson.Write(a));
        IEnumerable<string> codes = a.Edition.RulesFor(a.Kind.State).SelectMany(r => r.Results).Select(r => r.Code);
        foreach (string question in Tracer.Askable(a).Concat(codes).Distinct())
        {
            yield return ($"trace {question}", Tracer.Explain(a, question) ?? "");
        }

        var finder = new CeilingFinder(a, wax, Varied.Load);
        IReadOnlyList<Ceiling> ceilings = finder.Find();
        yield return ("ceiling", string.Join('\n', ceilings.SelectMany(c => c.Consequences).Select(c => $"{c.What} {c.Clause}")));
        yield return ("load plot", TextOf(CeilingPlot.Draw(a, Varied.Load, finder.Now, ceilings)));
    }

    /// <summary>The papers of the program's list.</summary>
    public IEnumerable<(string What, string Text)> Papers()
    {
        foreach (PaperKind paper in PaperList.Own.All)
        {
            foreach (Language language in paper.LanguagesOf(a))
            {
                yield return ($"{paper.Id} {language.Code}", TextOf(paper.Make(Request(language))));
            }
        }

        yield return ("label sheet", LabelSheet());
    }

    /// <summary>What goes by the law on the safety of products: what shops and authorities get, and what the maker keeps.</summary>
    public IEnumerable<(string What, string Text)> SafetyFiles()
    {
        IReadOnlyList<DutyLine> duties = new DutyFinder(catalogue, TestLaw.Lawbook).Of(a);
        yield return ("duties", string.Join('\n', duties.Select(d => $"{d.Duty.Says} {d.Shown} {d.Duty.Clause}")));
        yield return ("record of duties", TextOf(DutyRecord.Of(a, duties)));
        yield return ("packaging", TextOf(PackagingRecord.Of(a.Maker.Name, Packaging(), TestLaw.Today)));
        yield return ("complaints", TextOf(ComplaintRecord.Of(a.Maker.Name, Clocks(), TestLaw.Today)));
        if (safety.For(safety.Quantities, place.Code) is { } quantities)
        {
            yield return ("weighings", TextOf(WeighingRecord.Of(a.Maker.Name, [Weighed(quantities)], quantities.Clause)));
        }

        if (a.Kind.Burns)
        {
            RecordSection tests = new("t", TestRecord.Blocks(CandleTests.Of(a.Candle, catalogue, safety.File.Value)));
            yield return ("burn tests", TextOf(new KeptRecord("Burn tests", a.Maker.Name, [], [tests])));
        }

        foreach (ListingUse use in Enum.GetValues<ListingUse>())
        {
            OfferedListings offered = OfferedListings.Of(a, TestLaw.Lawbook, use, null);
            yield return (
                $"listing {use}",
                string.Join(
                    '\n',
                    offered.Made.SelectMany(l => new[] { ListingWriter.Text(l), ListingWriter.Html(l) }).Concat(offered.Refused)
                )
            );
        }
    }

    /// <summary>The papers of a recall, in the languages of the place and in English.</summary>
    public IEnumerable<(string What, string Text)> Recall()
    {
        AffectedBatch batch = TestRecalls.Batch(a);
        var documents = new RecallDocuments(TestLaw.Shop, problems);
        IEnumerable<string> codes = place.Languages.Select(l => l.Text).Append("en").Distinct();
        foreach (string code in codes.Where(c => safety.Words.Find(c) is not null))
        {
            RecallWords words = TestRecalls.Words(code, a.Kind.Id);
            var notice = NoticeText.Of([batch], a.Maker, Danger, words);
            Dispatch to = batch.Dispatches[0];
            yield return ($"recall on the web {code}", NoticeWeb.Html(notice));
            yield return ($"recall notice {code}", TextOf(documents.Notice(notice)));
            yield return ($"recall shelf card {code}", TextOf(documents.ShelfCard(notice)));
            yield return ($"recall letter {code}", TextOf(documents.Letter(notice, to, to.Receiver!, words)));
        }

        var recall = new RecallResult(new RecallQuery(RecallBy.Batch, batch.Batch.Code), [batch], []);
        var authority = new AuthorityRecord(recall, a.Maker, new DeclaredKinds(TestLaw.Lawbook.Kinds), TestLaw.Today);
        foreach (string code in codes.Where(c => safety.AuthorityWords.Find(c) is not null))
        {
            RecallRules? rules = safety.For(safety.Recalls, place.Code);
            yield return (
                $"authority's form {code}",
                TextOf(authority.Of(Danger, [(place.Name, rules)], safety.AuthorityWords.Find(code)!))
            );
        }
    }

    /// <summary>Which arrangements of the label there are, and what is measured on it.</summary>
    public IEnumerable<(string What, string Text)> Measured()
    {
        foreach (ArrangementResult arrangement in LabelDocument.Arrange(a, TestLaw.Shop, TestLaw.Lawbook.Burning, problems) ?? [])
        {
            yield return (
                "arrange",
                string.Join('\n', (arrangement.Attempt as Misfit)?.Remedies ?? arrangement.Attempt.Fitted?.Notes ?? [])
            );
        }

        if (LabelDocument.Make(a, TestLaw.Shop, TestLaw.Lawbook.Burning, problems)?.Fitted is { } label)
        {
            byte[] pdf = PdfDrawing.Draw(new PaperDocument("t", "en", label.Pages));
            IEnumerable<string> found = LabelInspector
                .Inspect(MeasuredPage.ReadAll(pdf), a, new HashSet<string>())
                .Select(i => $"{i.What}: {i.Clause}");
            yield return ("measure", string.Join('\n', found));
        }
    }

    /// <summary>The paper of the demo's gift set as it would be sold at a place.</summary>
    public static IEnumerable<(string What, string Text)> OfSets(Place place, Catalogue catalogue)
    {
        foreach (GiftSet set in catalogue.OfKind<GiftSet>())
        {
            var soldThere = new Written<PlaceName>(PlaceName.TryParse(place.Code)!, set.Place);
            List<Assessment> parts = [.. set.Parts.Select(p => DemoGoods.At(p.Product.Id, place).Assessment).OfType<Assessment>()];
            var unknown = new Problems();
            foreach (SetSheet sheet in new SetFinder(TestLaw.Lawbook, parts).Of(set with { SoldIn = [soldThere] }, unknown))
            {
                yield return ($"set {set.Id}", TextOf(SetRecord.Of(sheet)));
            }

            yield return ($"set {set.Id}", string.Join('\n', unknown.Found.Select(Said)));
        }
    }

    /// <summary>What is said of a problem.</summary>
    public static string Said(Problem problem) => $"{problem.What} {problem.Remedy}";

    /// <summary>The texts of a document as they are drawn, and what is said of its pictures.</summary>
    /// <exception cref="InvalidOperationException">It was not made.</exception>
    public static string TextOf(PaperDocument? document) =>
        document is null
            ? throw new InvalidOperationException("The paper was not made.")
            : string.Join('\n', document.Pages.Select(TextOf).Prepend(document.Title));

    private PaperRequest Request(Language language) =>
        new(a, language, wax, TestLaw.Lawbook, TestLaw.Shop, new PaperSettings()) { Catalogue = catalogue };

    private string LabelSheet()
    {
        PaperOutcome outcome = StockLabel.Make(Request(a.Languages[0]), Stock);
        string sheet = outcome is MadePaper made
            ? TextOf(SheetDocument.Make("t", "en", made.Document.Pages, Stock, new SheetOptions(1, true, new(0), new(0))))
            : "";
        string roll = StockLabel.Caution(a, StockShelf.Find("roll-203-100x75", problems)!) ?? "";
        return $"{TextOf(outcome)}\n{sheet}\n{roll}";
    }

    private PackagingReport Packaging()
    {
        PackagingRules? rules = safety.For(safety.Packagings, place.Code);
        IEnumerable<PackagingMark> marks = rules is null
            ? [new PackagingMark(place.Code, null)]
            : rules
                .Marks.Where(m => m.SoldIn.Count == 0 || m.SoldIn.Contains(place.Code.Text))
                .Select(m => new PackagingMark(place.Code, m));
        return new PackagingReport(
            [.. PackagingSum.Of(catalogue).Select(PackagingLine.Of)],
            [.. marks.Select(PackagingMarkReport.Of)],
            PackagingSum.NotDeclared(catalogue)
        );
    }

    private IReadOnlyList<IncidentClock> Clocks()
    {
        IEnumerable<Incident> there =
            from kind in Enum.GetValues<IncidentKind>()
            from harm in Enum.GetValues<Harm>()
            from incident in catalogue.OfKind<Incident>()
            select incident with
            {
                Kind = kind,
                Harm = harm,
                Country = place.Code,
            };
        return IncidentClocks.Of(new Catalogue([.. there], problems), safety, TestLaw.Today);
    }

    private (WeighingVerdict, string) Weighed(QuantityRules rules)
    {
        Weighing weighing = catalogue.OfKind<Weighing>().First();
        return (WeighingVerdict.Of(weighing, a.Candle, rules), "B-1");
    }

    private static string TextOf(KeptRecord record) => TextOf(RecordDocument.Make(record, TestLaw.Shop, new Problems()));

    private static string TextOf(PaperOutcome outcome) =>
        outcome switch
        {
            MadePaper made => TextOf(made.Document) + "\n" + string.Join('\n', made.Warnings),
            MissingPaper missing => string.Join('\n', missing.Problems.Select(Said).Prepend(missing.Why)),
            _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, "There is no such outcome."),
        };

    private static string TextOf(Scene page)
    {
        var said = new StringBuilder();
        TextItem? last = null;
        foreach (SceneItem item in page.All)
        {
            if (item is TextItem text)
            {
                said.Append(last is not null && GoesOn(last, text) ? "" : " ").Append(text.Shaped.Text);
                last = text;
            }
            else if (item is TaggedItem { Alternative: { } words })
            {
                said.Append(' ').Append(words).Append(' ');
            }
        }

        return said.ToString();
    }

    // A word of which a part is bold is drawn in two pieces.
    private static bool GoesOn(TextItem last, TextItem next) =>
        Math.Abs(next.BaselineMm - last.BaselineMm) < 0.01 && Math.Abs(next.XMm - last.XMm - last.WidthMm) < last.SizeMm / 10;
}
