using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

public class StatementTests
{
    // Where the law changed after the package was made, or the package has a slip of its own.
    private static readonly Dictionary<string, string> Justified = new()
    {
        ["es H226"] = "the law's Spanish text has the plural (from memory); the package the singular",
        ["fr H314"] = "reworded by an adaptation after the package was made (from memory)",
        ["fr H318"] = "reworded by an adaptation after the package was made (from memory)",
        ["fr H361"] = "the package leaves the unborn child out; its own H361d has it",
        ["it H350i"] = "the law's Italian text says 'provocare' as in H350 (from memory); the package 'causare'",
    };

    private static readonly (string Code, string File)[] Compared =
    [
        ("en", "english"),
        ("de", "german"),
        ("fr", "french"),
        ("es", "spanish"),
        ("it", "italian"),
    ];

    /// <summary>Every H and EUH statement that both have, one check each.</summary>
    public static TheoryData<string, string, string> SharedStatements()
    {
        var data = new TheoryData<string, string, string>();
        foreach ((string code, string file) in Compared)
        {
            Dictionary<string, string> theirs = GhsystemFile.Read(file);
            foreach (
                string statement in TestLaw
                    .Lawbook.FindLanguage(code)!
                    .Official.Keys.Select(k => k.Text)
                    .Where(k => k[0] is 'H' or 'E' && theirs.ContainsKey(k))
            )
            {
                data.Add(code, file, statement);
            }
        }

        return data;
    }

    [Outside("LaTeX package ghsystem (Debian texlive-science): independent transcription of CLP Annexes II and III")]
    [Theory]
    [MemberData(nameof(SharedStatements))]
    public void HazardStatementsAgreeWithAnIndependentTranscription(string code, string file, string statement)
    {
        string ours = GhsystemFile.Normalise(TestLaw.Lawbook.FindLanguage(code)!.Official[StatementCode.Of(statement)]);
        string theirs = GhsystemFile.Read(file)[statement];
        if (Justified.ContainsKey($"{code} {statement}"))
        {
            Assert.NotEqual(theirs, ours);
        }
        else
        {
            Assert.Equal(theirs, ours);
        }
    }

    [Fact]
    public void TheComparisonIsBroad() => Assert.True(SharedStatements().Count > 230);

    [Fact]
    public void EveryLanguageHasEveryStatementThatItsPlacesMayNeed()
    {
        foreach (Edition edition in TestLaw.Lawbook.Editions)
        {
            var needed = new HashSet<StatementCode>(edition.Rules.SelectMany(Results).Select(r => r.Statement));
            needed.UnionWith(edition.Precautions.Offers.Where(o => o.Use != PrecautionUse.Drop).Select(o => o.Code));
            needed.UnionWith(edition.Rules.OfType<LimitRule>().Select(r => r.Elicitation?.Statement).OfType<StatementCode>());
            IEnumerable<string> languages = TestLaw
                .Lawbook.Places.Where(p => p.EditionId == edition.Id)
                .SelectMany(p => p.Languages)
                .Distinct();
            foreach (Language language in languages.Select(TestLaw.Lawbook.FindLanguage).OfType<Language>())
            {
                Assert.Empty(
                    needed.Where(code => language.Statement(code) is null).Select(code => $"{edition.Id}: {language.Code} lacks {code}")
                );
            }
        }
    }

    [Fact]
    public void NothingPrintedStillHasDotsOrMarks()
    {
        foreach (Language language in TestLaw.Lawbook.Languages)
        {
            foreach (
                PrecautionOffer offer in TestLaw
                    .Lawbook.Editions.SelectMany(e => e.Precautions.Offers)
                    .Where(o => o.Use != PrecautionUse.Drop)
            )
            {
                string text = language.Statement(offer.Code)!;
                Assert.False(text.Contains('…') || text.Contains('['), $"{language.Code} {offer.Code}: {text}");
            }
        }
    }

    private static readonly string[] OnlyInTheUnitedStates = ["usWarning", "astmSight", "astmFire", "astmChildren", "netWeight"];

    [Fact]
    public void EveryLanguageHasTheSameWordsAndMessages()
    {
        Language english = TestLaw.Lawbook.FindLanguage("en")!;
        foreach (Language language in TestLaw.Lawbook.Languages)
        {
            Assert.Empty(
                english.Words.Keys.Except(language.Words.Keys).Except(OnlyInTheUnitedStates).Select(k => $"{language.Code} lacks {k}")
            );
            Assert.Equal(english.Safety.Keys.Order(), language.Safety.Keys.Order());
            Assert.All(english.Safety, m => Assert.Equal(Marks(m.Value), Marks(language.Safety[m.Key])));
        }
    }

    private static IEnumerable<string> Marks(string message) =>
        System.Text.RegularExpressions.Regex.Matches(message, @"\{\w+\}").Select(m => m.Value).Order();

    private static IEnumerable<HazardCategory> Results(ClassRule rule) =>
        rule switch
        {
            LimitRule limit => limit.Rungs.Select(r => r.Result),
            AcuteToxicityRule acute => acute.Bounds.Select(b => b.Result),
            _ => [],
        };
}
