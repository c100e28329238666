using System.Text;
using System.Text.RegularExpressions;
using Chandlery.Cli;
using Chandlery.Core.Asked.Ceilings;
using Chandlery.Core.Assessed;
using Chandlery.Core.Assessed.Reports;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.SafetyFiles.Duties;
using Chandlery.Paper.Drawing;
using Chandlery.Paper.Papers;
using Chandlery.Paper.Papers.Labels;
using Chandlery.Paper.Proofs;
using Chandlery.Tests.Paper;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Law;

/// <summary>Everything that is printed for a place cites that place's law only.</summary>
public sealed class ForeignCitationTests
{
    // What no paper of a place may cite. The GHS is the base that several laws name themselves.
    private static readonly Dictionary<string, string> Foreign = new()
    {
        ["IE"] = $@"{American}|{Others}|\bGB CLP|UK REACH|SANS",
        ["NI"] = $@"{American}|{Others}|\bGB CLP|UK REACH|SANS",
        ["GB"] = $@"(?<!GB )\bCLP\b|(?<!UK )\bREACH\b|(?<!retained Regulation )\((?:EU|EC)\)|European Union|{American}|{Others}|SANS",
        ["US"] = $@"{European}|{Others}|SANS|\bEUH[0-9]",
        ["ZA"] = $@"{European}|{American}|{Others}",
        ["UN"] = $@"{European}|{American}|{Others}|SANS",
        ["CA"] = $@"{European}|{American}|{Swiss}|{Australian}|{NewZealands}|SANS|\bEUH[0-9]",
        ["AU"] = $@"{European}|{American}|{Swiss}|{Canadian}|{NewZealands}|SANS|\bEUH[0-9]",
        ["NZ"] = $@"{European}|{American}|{Swiss}|{Canadian}|{Australian}|SANS|\bEUH[0-9]",
        ["CH"] =
            $@"(?<!EU-)\bCLP\b|(?<!EU-)\bREACH\b|\((?:EU|EC)\)|European Union|ECHA|{American}|{Canadian}|{Australian}|{NewZealands}|GB CLP|SANS",
    };

    private const string European = @"\bCLP\b|\bREACH\b|\((?:EU|EC)\)|European Union|ECHA";
    private const string American = @"CFR|OSHA|U\.S\.C|ASTM F2058";
    private const string Canadian = @"SOR/|C\.R\.C|Canada";
    private const string Australian = @"Trade Measurement|Australia|Poisons Standard|Work Health and Safety";
    private const string NewZealands = @"Hazardous Substances (?:\(|and New)|New Zealand";
    private const string Swiss = @"ChemO|ChemRRV|PrSG|\bSR [0-9]";
    private const string Others = $"{Canadian}|{Australian}|{NewZealands}|{Swiss}";

    private const string SwissImporter =
        "  - { name: Seewind Handel, address: [1 Uferweg, Kleinstein], country: CH, telephone: +999 40 555 021, email: post@seewind.example }\n";

    public static TheoryData<string, string> Candles()
    {
        var data = new TheoryData<string, string>();
        foreach (string place in Foreign.Keys)
        {
            foreach (string candle in new[] { "fig-tin", "harbour-bowl", "slate-jar" })
            {
                data.Add(place, candle);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Candles))]
    public void No_paper_cites_the_law_of_another_place(string place, string candle)
    {
        using var folder = new MakersFolder();
        folder.Change("maker.yaml", "importers:\n", "importers:\n" + SwissImporter);
        Catalogue catalogue = folder.Catalogue;
        var problems = new Problems();
        Assessment a = new Assessor(TestLaw.Lawbook, catalogue, TestLaw.Today).Assess(
            catalogue.All.First(d => d.Id == candle && d is Candle),
            place,
            problems
        )[0];
        Assert.Empty(problems.Found);
        Wax wax = catalogue.Find<Wax>(a.Candle.Wax, problems)!;
        var foreign = new Regex(Foreign[place]);
        var found = new List<string>();
        foreach ((string what, string text) in Everything(a, wax, catalogue))
        {
            // The law's own name may say where it comes from; candidates are shown with what stands around them.
            // Lines are joined again, or the break between "GB" and "CLP" would make another law of it.
            string plain = Regex.Replace(text, @"\s+", " ").Replace(a.Edition.Name, "", StringComparison.Ordinal);
            plain = plain.Replace($"sold in {a.Places[0].Name}", "", StringComparison.Ordinal);
            foreach (string source in a.Edition.Sources.Concat(a.Edition.Covers).Concat(a.Edition.DoesNotCover))
            {
                plain = plain.Replace(source, "", StringComparison.Ordinal).Replace(Apostrophes.In(source), "", StringComparison.Ordinal);
            }

            found.AddRange(
                foreign
                    .Matches(plain)
                    .Select(m => $"{what}: ...{plain[Math.Max(0, m.Index - 60)..Math.Min(plain.Length, m.Index + 60)]}...")
            );
        }

        Assert.True(found.Count == 0, $"{found.Count}:\n" + string.Join('\n', found.Distinct().Take(30)));
    }

    private static IEnumerable<(string What, string Text)> Everything(Assessment a, Wax wax, Catalogue catalogue)
    {
        yield return ("assessment", AssessmentText.Render(a, 140, Ink.None));
        yield return ("JSON", AssessmentJson.Write(a));
        foreach (string question in Tracer.Askable(a).Concat(a.Edition.Rules.SelectMany(r => r.Results).Select(r => r.Code)).Distinct())
        {
            yield return ($"trace {question}", Tracer.Explain(a, question) ?? "");
        }

        foreach (Ceiling ceiling in new CeilingFinder(a, wax, Varied.Load).Find())
        {
            yield return ("ceiling", string.Join('\n', ceiling.Consequences.Select(c => $"{c.What} {c.Clause}")));
        }

        foreach (PaperKind paper in PaperList.Own.All)
        {
            foreach (Language language in paper.LanguagesOf(a))
            {
                if (
                    paper.Make(
                        new PaperRequest(a, language, wax, TestLaw.Lawbook, TestLaw.Shop, new PaperSettings()) { Catalogue = catalogue }
                    )
                    is MadePaper made
                )
                {
                    yield return (paper.Id, TextOf(PdfDrawing.Draw(made.Document)) + "\n" + string.Join('\n', made.Warnings));
                }
            }
        }

        yield return (
            "duties",
            string.Join('\n', new DutyFinder(catalogue, TestLaw.Lawbook).Of(a).Select(d => $"{d.Duty.Says} {d.Shown} {d.Duty.Clause}"))
        );

        var problems = new Problems();
        foreach (ArrangementResult arrangement in LabelDocument.Arrange(a, TestLaw.Shop, TestLaw.Lawbook.Burning, problems) ?? [])
        {
            yield return ("arrange", string.Join('\n', (arrangement.Missing?.Remedies ?? []).Concat(arrangement.Fitted?.Notes ?? [])));
        }

        if (LabelDocument.Make(a, TestLaw.Shop, TestLaw.Lawbook.Burning, problems)?.Fitted is { } label)
        {
            byte[] pdf = PdfDrawing.Draw(new Chandlery.Paper.Scenes.PaperDocument("t", "en", label.Pages));
            yield return (
                "measure",
                string.Join(
                    '\n',
                    LabelInspector.Inspect(MeasuredPage.ReadAll(pdf), a, new HashSet<string>()).Select(i => $"{i.What}: {i.Clause}")
                )
            );
        }
    }

    private static string TextOf(byte[] pdf)
    {
        using var reader = new PdfReader(pdf);
        var text = new StringBuilder();
        for (int page = 0; page < reader.Pages.Count; page++)
        {
            text.AppendLine(reader.Text(page));
        }

        return text.ToString();
    }
}
