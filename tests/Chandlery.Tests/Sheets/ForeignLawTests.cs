using System.Text.RegularExpressions;
using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Sheets;

/// <summary>Each place's papers cite that place's law and no other, and speak of the candle and not of what computed them.</summary>
public sealed class ForeignLawTests
{
    private const string NotEuropean = @"\bCLP\b|\bREACH\b|\(EU\)|\(EC\)|European Union|\bECHA\b";
    private const string NotBritish = @"(?<!GB )\bCLP\b|(?<!UK )\bREACH\b|\(EU\)|European Chemicals Agency|\bCFR\b|\bOSHA\b";
    private const string NotOfTheUnion = @"\bCFR\b|\bOSHA\b|GB CLP|UK REACH|SANS 10234";
    private static readonly string[] Candles = ["candles/harbour-bowl.yaml", "candles/fig-tin.yaml", "candles/slate-jar.yaml"];

    public static TheoryData<string, string, string> Papers
    {
        get
        {
            var papers = new TheoryData<string, string, string>();
            foreach (string candle in Candles)
            {
                papers.Add("US", candle, NotEuropean);
                papers.Add("ZA", candle, NotEuropean + @"|\bCFR\b|\bOSHA\b");
                papers.Add("UN", candle, NotEuropean + @"|\bCFR\b|\bOSHA\b");
                papers.Add("GB", candle, NotBritish);
                papers.Add("NI", candle, NotOfTheUnion);
                papers.Add("IE", candle, NotOfTheUnion);
            }

            return papers;
        }
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void A_place_cites_its_own_law_only(string place, string candle, string foreign)
    {
        Assessment a = TestLaw.Demo(candle, place);
        SafetySheetRules rules = a.Edition.SafetySheet;
        foreach (string paper in new[] { "safety-sheet", "product-information" })
        {
            string text = PrintedText.Of(paper, a, "en");
            Assert.Empty(Regex.Matches(text, foreign).Select(m => text[Math.Max(0, m.Index - 40)..(m.Index + m.Length)]));
            Assert.DoesNotContain("program", text, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("sheet due", text, StringComparison.Ordinal);
            Assert.All(
                new[] { rules.Classified, rules.ForPublic, rules.OnRequest, rules.NotDue },
                duty => Assert.DoesNotContain(duty.Says, text, StringComparison.Ordinal)
            );
        }
    }

    [Theory]
    [InlineData("US", "29 CFR 1910.1200")]
    [InlineData("ZA", "SANS 10234")]
    [InlineData("UN", "GHS")]
    [InlineData("GB", "UK REACH Art. 14")]
    [InlineData("NI", "REACH Art. 14")]
    public void A_place_does_cite_its_own_law(string place, string own) =>
        Assert.Contains(own, PrintedText.Of("safety-sheet", TestLaw.Demo("candles/fig-tin.yaml", place), "en"), StringComparison.Ordinal);
}
