using System.Globalization;
using System.Text.RegularExpressions;
using Chandlery.Core.Assessed;
using Chandlery.Core.Classified;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Sheets;

/// <summary>A substance's share is one figure, whichever paper a reader holds.</summary>
public sealed class SameFigureTests
{
    private static readonly Regex Figure = new(@"(?<![\d.,/-])\d+[.,]\d+(?![\d-])", RegexOptions.CultureInvariant);

    [Theory]
    [InlineData("en", "d-Limonene", "safety-sheet,shop-card,poison-facts")]
    [InlineData("en", "Sweet orange oil", "safety-sheet,shop-card")]
    [InlineData("en", "Acetyl cedrene", "safety-sheet,shop-card,poison-facts")]
    [InlineData("en", "Isoeugenol", "safety-sheet,shop-card")]
    [InlineData("de", "d-Limonene", "safety-sheet,shop-card")]
    [InlineData("de", "Acetyl cedrene", "safety-sheet,shop-card")]
    [InlineData("de", "Isoeugenol", "safety-sheet,shop-card")]
    public void The_high_end_of_a_share_is_written_the_same_everywhere(string language, string name, string papers)
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        Substance substance = a.Substances.Single(s => s.Name == name);
        double high = substance.Ingredient.WholeHigh.Value;
        var written = new Dictionary<string, string>();
        foreach (string paper in papers.Split(','))
        {
            string[] near =
            [
                .. Figure
                    .Matches(PrintedText.Of(paper, a, language))
                    .Select(m => m.Value)
                    .Where(f => Math.Abs((Value(f) / high) - 1) < 0.012)
                    .Distinct(),
            ];
            written[paper] = string.Join(" and ", near);
        }

        string figure = Assert.Single(written.Values.Distinct());
        Assert.InRange(Value(figure), high * (1 - 1e-9), high * 1.01);
        Assert.Contains(language == "de" ? ',' : '.', figure);
        Assert.True(figure.TrimStart('0', '.', ',').Count(char.IsDigit) <= 3, figure);
    }

    private static double Value(string figure) => double.Parse(figure.Replace(',', '.'), CultureInfo.InvariantCulture);
}
