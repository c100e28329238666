using System.Globalization;
using System.Text;
using Chandlery.Tests.Support;
using Xunit.Abstractions;

namespace Chandlery.Tests.SecondCalculation;

/// <summary>The program against a second calculation of the same law, on random mixtures.</summary>
/// <remarks>
/// <c>CHANDLERY_MIXTURES=100000 dotnet test tests/Chandlery.Tests --filter SecondCalculationTests</c> asks for more of them,
/// <c>CHANDLERY_FIRST_MIXTURE</c> begins at another seed, <c>CHANDLERY_EXAMPLES</c> asks for more examples of each difference.
/// </remarks>
public sealed class SecondCalculationTests(ITestOutputHelper output)
{
    private const int UsualCount = 3000;
    private const int UsualExamples = 2;

    [Fact]
    [Outside(
        "Regulation (EC) No 1272/2008, Annex I parts 3 to 5, Annex II 2.8, Annex III, Art. 18 and 26, consolidated to 1 May 2026; second derivation"
    )]
    public void The_program_agrees_with_a_second_calculation()
    {
        int first = Asked("CHANDLERY_FIRST_MIXTURE", 1);
        int count = Asked("CHANDLERY_MIXTURES", UsualCount);
        List<(int Seed, Disagreement Found)> differing =
        [
            .. Enumerable
                .Range(first, count)
                .AsParallel()
                .AsOrdered()
                .Select(seed => (seed, MixtureComparison.Of(RandomMixtures.Make(seed))))
                .Where(d => d.Item2 is not null)
                .Select(d => (d.seed, d.Item2!)),
        ];
        string report = $"{differing.Count} of {count} mixtures differ.\n{Report(differing)}";
        output.WriteLine(report);
        Assert.True(differing.Count == 0, report);
    }

    [Fact]
    public void A_mixture_is_written_as_it_is_read()
    {
        foreach (int seed in Enumerable.Range(1, 500))
        {
            string text = MixtureText.Write(RandomMixtures.Make(seed));
            Assert.Equal(text, MixtureText.Write(MixtureText.Read(text)));
        }
    }

    /// <summary>Each difference with its count, most frequent first, and the plainest mixtures that still show it.</summary>
    private static string Report(IReadOnlyCollection<(int Seed, Disagreement Found)> differing)
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
                text.AppendLine(Plainer.Make(found, difference).ToString());
            }
        }

        return text.ToString();
    }

    private static int Asked(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), CultureInfo.InvariantCulture, out int asked) ? asked : otherwise;
}
