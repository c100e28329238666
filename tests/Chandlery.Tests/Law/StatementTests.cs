using Chandlery.Core.Law;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

public class StatementTests
{
    // Where the law changed after the package was made, or the package has a slip of its own.
    private static readonly Dictionary<string, string> Justified = new() { };

    [Outside("LaTeX package ghsystem (Debian texlive-science): independent transcription of CLP Annexes II and III")]
    [Theory]
    [InlineData("en", "english")]
    [InlineData("de", "german")]
    public void HazardStatementsAgreeWithAnIndependentTranscription(string code, string file)
    {
        Language language = Bench.Lawbook.FindLanguage(code)!;
        Dictionary<string, string> theirs = GhsystemFile.Read(file);
        int compared = 0;
        var differences = new List<string>();
        foreach ((string statement, string text) in language.Official.Where(s => s.Key[0] is 'H' or 'E'))
        {
            if (!theirs.TryGetValue(statement, out string? other) || Justified.ContainsKey($"{code} {statement}"))
            {
                continue;
            }

            compared++;
            if (GhsystemFile.Normalise(text) != other)
            {
                differences.Add($"{code} {statement}: ours '{GhsystemFile.Normalise(text)}', theirs '{other}'");
            }
        }

        Assert.True(differences.Count == 0, string.Join("\n", differences));
        Assert.InRange(compared, 40, 200);
    }

    [Fact]
    public void EveryLanguageHasEveryStatementThatALabelMayNeed()
    {
        var needed = new HashSet<string>(Bench.Lawbook.Editions.SelectMany(e => e.Rules).SelectMany(Results).Select(r => r.Statement));
        needed.UnionWith(
            Bench.Lawbook.Editions.SelectMany(e => e.Precautions.Offers).Where(o => o.Use != PrecautionUse.Drop).Select(o => o.Code)
        );
        needed.UnionWith(["EUH208", "EUH210", "EUH066"]);
        foreach (Language language in Bench.Lawbook.Languages)
        {
            Assert.Empty(needed.Where(code => language.Statement(code) is null).Select(code => language.Code + " lacks " + code));
        }
    }

    [Fact]
    public void NothingPrintedStillHasDotsOrMarks()
    {
        foreach (Language language in Bench.Lawbook.Languages)
        {
            foreach (
                PrecautionOffer offer in Bench
                    .Lawbook.Editions.SelectMany(e => e.Precautions.Offers)
                    .Where(o => o.Use != PrecautionUse.Drop)
            )
            {
                string text = language.Statement(offer.Code)!;
                Assert.False(text.Contains('…') || text.Contains('['), $"{language.Code} {offer.Code}: {text}");
            }
        }
    }

    [Fact]
    public void EveryLanguageHasTheSameWordsAndMessages()
    {
        Language english = Bench.Lawbook.FindLanguage("en")!;
        foreach (Language language in Bench.Lawbook.Languages)
        {
            Assert.Equal(english.Words.Keys.Order(), language.Words.Keys.Order());
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
