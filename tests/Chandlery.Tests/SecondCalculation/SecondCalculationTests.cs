using System.Globalization;
using System.Text;
using Chandlery.Tests.Support;
using Xunit.Abstractions;

namespace Chandlery.Tests.SecondCalculation;

/// <summary>The program against a second calculation of the same law, on random solids and liquids.</summary>
/// <remarks>
/// <c>CHANDLERY_MIXTURES=100000 dotnet test tests/Chandlery.Tests --filter SecondCalculationTests</c> asks for more of each kind,
/// <c>CHANDLERY_FIRST_MIXTURE</c> begins at another seed, <c>CHANDLERY_EXAMPLES</c> asks for more examples of each difference.
/// </remarks>
public sealed class SecondCalculationTests(ITestOutputHelper output)
{
    private const int UsualExamples = 2;

    [Theory]
    [InlineData(false, 900)]
    [InlineData(true, 900)]
    [Outside(
        "Regulation (EC) No 1272/2008, Annex I 2.6 and parts 3 to 5, Annex II 1.1 and 2.8, Annex III, Art. 18, 25 and 26, consolidated to 1 May 2026; second derivation"
    )]
    public void The_program_agrees_with_a_second_calculation(bool liquid, int usual) => Compare(SecondEdition.Union, liquid, usual);

    [Theory]
    [InlineData(false, 150)]
    [InlineData(true, 150)]
    [Outside("Regulation (EC) No 1272/2008 as retained in Great Britain, without Delegated Regulation (EU) 2023/707 (from memory)")]
    public void And_under_the_law_of_Great_Britain(bool liquid, int usual) => Compare(SecondEdition.GreatBritain, liquid, usual);

    [Theory]
    [InlineData(false, 150)]
    [InlineData(true, 150)]
    [Outside("UN GHS revision 10 with all its building blocks (from memory); second derivation")]
    public void And_under_all_building_blocks_of_the_GHS(bool liquid, int usual) => Compare(SecondEdition.Ghs, liquid, usual);

    [Theory]
    [InlineData(false, 300)]
    [InlineData(true, 300)]
    [Outside("29 CFR 1910.1200, Appendices A.1 to A.10 and B.6, as of 2024 (from memory); second derivation")]
    public void And_under_the_law_of_the_United_States(bool liquid, int usual) => Compare(SecondEdition.UnitedStates, liquid, usual);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_mixture_is_written_as_it_is_read(bool liquid)
    {
        foreach (int seed in Enumerable.Range(1, 500))
        {
            GivenMixture mixture = RandomMixtures.Make(seed, liquid);
            string text = MixtureText.Write(mixture);
            Assert.Equal(text, MixtureText.Write(MixtureText.Read(text)));
            Assert.Equal(mixture.Liquid, MixtureText.Read(text).Liquid);
        }
    }

    private void Compare(SecondEdition edition, bool liquid, int usual)
    {
        int first = Asked("CHANDLERY_FIRST_MIXTURE", 1);
        int count = Asked("CHANDLERY_MIXTURES", usual);
        List<(int Seed, Disagreement Found)> differing =
        [
            .. Enumerable
                .Range(first, count)
                .AsParallel()
                .AsOrdered()
                .Select(seed => (seed, MixtureComparison.Of(RandomMixtures.Make(seed, liquid), edition)))
                .Where(d => d.Item2 is not null)
                .Select(d => (d.seed, d.Item2!)),
        ];
        string report = $"{differing.Count} of {count} mixtures differ.\n{Report(differing, edition)}";
        output.WriteLine(report);
        Assert.True(differing.Count == 0, report);
    }

    /// <summary>Each difference with its count, most frequent first, and the plainest mixtures that still show it.</summary>
    private static string Report(IReadOnlyCollection<(int Seed, Disagreement Found)> differing, SecondEdition edition)
    {
        int examples = Asked("CHANDLERY_EXAMPLES", UsualExamples);
        var text = new StringBuilder();
        foreach (
            IGrouping<string, (int Seed, Disagreement Found, string Difference)> kind in differing
                .SelectMany(d => d.Found.Differences.Select(difference => (d.Seed, d.Found, difference)))
                .GroupBy(d => d.difference)
                .OrderByDescending(g => g.Count())
        )
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"{kind.Count()} x {kind.Key}");
            foreach ((int seed, Disagreement found, string difference) in kind.Take(examples))
            {
                text.AppendLine(CultureInfo.InvariantCulture, $"  seed {seed}, reduced:");
                text.AppendLine(Plainer.Make(found, difference, edition).ToString());
            }
        }

        return text.ToString();
    }

    private static int Asked(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), CultureInfo.InvariantCulture, out int asked) ? asked : otherwise;
}
