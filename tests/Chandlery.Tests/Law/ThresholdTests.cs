using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Declared;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>
/// Each row of the law on both sides of its limit. The expected values are those of Regulation (EC) No 1272/2008 (CLP),
/// consolidated text; the confidence that stands beside each row in data/law/eu-clp/classes.yaml says which of them were
/// verified in a published text and which are from memory.
/// </summary>
public class ThresholdTests
{
    [Outside("CLP Annex I, 3.4.3.3.1, Table 3.4.5 (0.1 % and 1 %, from memory and ECHA guidance)")]
    [Theory]
    [InlineData("Skin Sens. 1B, H317", 0.999, "")]
    [InlineData("Skin Sens. 1B, H317", 1.0, "Skin Sens. 1B")]
    [InlineData("Skin Sens. 1, H317", 0.999, "")]
    [InlineData("Skin Sens. 1, H317", 1.0, "Skin Sens. 1")]
    [InlineData("Skin Sens. 1A, H317", 0.0999, "")]
    [InlineData("Skin Sens. 1A, H317", 0.1, "Skin Sens. 1A")]
    [InlineData("Resp. Sens. 1B, H334", 0.999, "")]
    [InlineData("Resp. Sens. 1B, H334", 1.0, "Resp. Sens. 1B")]
    [InlineData("Resp. Sens. 1A, H334", 0.0999, "")]
    [InlineData("Resp. Sens. 1A, H334", 0.1, "Resp. Sens. 1A")]
    public void Sensitisation(string hazard, double percent, string expected) =>
        Assert.Equal(expected, Bench.Codes(Bench.Line("a", percent, [hazard])));

    [Outside("CLP Annex I, 3.2.3.3, Table 3.2.3 (ECHA helpdesk presentation)")]
    [Theory]
    [InlineData("Skin Irrit. 2, H315", 9.99, "")]
    [InlineData("Skin Irrit. 2, H315", 10, "Skin Irrit. 2")]
    [InlineData("Skin Corr. 1A, H314", 0.99, "")]
    [InlineData("Skin Corr. 1A, H314", 1, "Skin Irrit. 2, Eye Irrit. 2")]
    [InlineData("Skin Corr. 1A, H314", 4.99, "Skin Irrit. 2, Eye Dam. 1")]
    [InlineData("Skin Corr. 1A, H314", 5, "Skin Corr. 1A, Eye Dam. 1")]
    [InlineData("Skin Corr. 1B, H314", 5, "Skin Corr. 1B, Eye Dam. 1")]
    [InlineData("Skin Corr. 1C, H314", 5, "Skin Corr. 1C, Eye Dam. 1")]
    public void SkinDamage(string hazard, double percent, string expected) =>
        Assert.Equal(expected, Bench.Codes(Bench.Line("a", percent, [hazard])));

    [Outside("CLP Annex I, 3.3.3.3, Table 3.3.3 (3 % verified in a published explanation, the rest from memory)")]
    [Theory]
    [InlineData("Eye Irrit. 2, H319", 9.99, "")]
    [InlineData("Eye Irrit. 2, H319", 10, "Eye Irrit. 2")]
    [InlineData("Eye Dam. 1, H318", 0.99, "")]
    [InlineData("Eye Dam. 1, H318", 1, "Eye Irrit. 2")]
    [InlineData("Eye Dam. 1, H318", 2.99, "Eye Irrit. 2")]
    [InlineData("Eye Dam. 1, H318", 3, "Eye Dam. 1")]
    public void EyeDamage(string hazard, double percent, string expected) =>
        Assert.Equal(expected, Bench.Codes(Bench.Line("a", percent, [hazard])));

    [Outside("CLP Annex I, 3.2.3.3.2: 10 x Skin Corr. 1 + Skin Irrit. 2 >= 10 % (ECHA helpdesk presentation)")]
    [Theory]
    [InlineData(0.5, 4.99, "")]
    [InlineData(0.5, 5.0, "Skin Irrit. 2")]
    public void CorrosiveAndIrritantAreAddedWithTenfoldWeight(double corrosive, double irritant, string expected) =>
        Assert.Equal(
            expected,
            Bench.Codes(Bench.Line("c", corrosive, ["Skin Corr. 1B, H314"]), Bench.Line("i", irritant, ["Skin Irrit. 2, H315"]))
        );

    [Outside("CLP Annex I, 4.1.3.5.5.3, Table 4.1.1 and 4.1.3.5.5.5 (M-factors; from memory)")]
    [Theory]
    [InlineData(24.9, 1, "")]
    [InlineData(25, 1, "Aquatic Acute 1")]
    [InlineData(2.49, 10, "")]
    [InlineData(2.5, 10, "Aquatic Acute 1")]
    [InlineData(0.25, 100, "Aquatic Acute 1")]
    public void AquaticAcute(double percent, double m, string expected) =>
        Assert.Equal(expected, Bench.Codes(Bench.Line("a", percent, ["Aquatic Acute 1, H400"], m: m)));

    [Outside("CLP Annex I, 4.1.3.5.5.4, Table 4.1.2 (from memory)")]
    [Theory]
    [InlineData("Aquatic Chronic 1, H410", 25, 1, "Aquatic Chronic 1")]
    [InlineData("Aquatic Chronic 1, H410", 24.9, 1, "Aquatic Chronic 2")]
    [InlineData("Aquatic Chronic 1, H410", 2.5, 1, "Aquatic Chronic 2")]
    [InlineData("Aquatic Chronic 1, H410", 2.49, 1, "Aquatic Chronic 3")]
    [InlineData("Aquatic Chronic 1, H410", 0.25, 1, "Aquatic Chronic 3")]
    [InlineData("Aquatic Chronic 1, H410", 0.249, 1, "")]
    [InlineData("Aquatic Chronic 1, H410", 0.25, 10, "Aquatic Chronic 2")]
    [InlineData("Aquatic Chronic 2, H411", 25, 0, "Aquatic Chronic 2")]
    [InlineData("Aquatic Chronic 2, H411", 24.9, 0, "Aquatic Chronic 3")]
    [InlineData("Aquatic Chronic 2, H411", 2.5, 0, "Aquatic Chronic 3")]
    [InlineData("Aquatic Chronic 2, H411", 2.49, 0, "")]
    [InlineData("Aquatic Chronic 3, H412", 25, 0, "Aquatic Chronic 3")]
    [InlineData("Aquatic Chronic 3, H412", 24.9, 0, "")]
    [InlineData("Aquatic Chronic 4, H413", 25, 0, "Aquatic Chronic 4")]
    [InlineData("Aquatic Chronic 4, H413", 24.9, 0, "")]
    public void AquaticChronic(string hazard, double percent, double m, string expected) =>
        Assert.Equal(expected, Bench.Codes(Bench.Line("a", percent, [hazard], m: m == 0 ? null : m)));

    [Outside("CLP Annex I, 4.1.3.1: relevant from 0.1 % (divided by M) and from 1 % (consolidated text)")]
    [Fact]
    public void SharesBelowTheCutOffDoNotCount()
    {
        // 30 substances of 0.099 % each would fill 297 % of the limit of Chronic 3 if they counted.
        Ingredient[] many = [.. Enumerable.Range(0, 30).Select(i => Bench.Line("s" + i, 0.099, ["Aquatic Chronic 1, H410"], m: 1))];
        Assert.Equal("", Bench.Codes(many));
        Ingredient[] enough = [.. Enumerable.Range(0, 30).Select(i => Bench.Line("s" + i, 0.1, ["Aquatic Chronic 1, H410"], m: 1))];
        Assert.Equal("Aquatic Chronic 2", Bench.Codes(enough));
    }

    [Outside("CLP Annex I, 3.4.3.3.1: at least one ingredient; sensitisers are not added up")]
    [Fact]
    public void SensitisersAreNotAdded() =>
        Assert.Equal("", Bench.Codes(Bench.Line("a", 0.9, ["Skin Sens. 1B, H317"]), Bench.Line("b", 0.9, ["Skin Sens. 1B, H317"])));

    [Outside("CLP Art. 10 and Annex I, 3.4.3.3: a specific limit beats the general one")]
    [Theory]
    [InlineData(0.0099, "")]
    [InlineData(0.01, "Skin Sens. 1A")]
    public void SpecificLimitOfASensitiser(double percent, string expected) =>
        Assert.Equal(expected, Bench.Codes(Bench.Line("a", percent, ["Skin Sens. 1A, H317"], ["Skin Sens. 1A, H317:0.01"])));

    // ECHA, Guidance on the application of the CLP criteria, 3.2.3.3: sum of share over limit; from memory.
    [Outside("ECHA, Guidance on the application of the CLP criteria, 3.2 (sum of share / limit >= 1; from memory)")]
    [Theory]
    [InlineData(2.49, 5, "")]
    [InlineData(2.5, 5, "Skin Irrit. 2")]
    public void SpecificLimitInASum(double special, double general, string expected) =>
        Assert.Equal(
            expected,
            Bench.Codes(
                Bench.Line("special", special, ["Skin Irrit. 2, H315"], ["Skin Irrit. 2, H315:5"]),
                Bench.Line("general", general, ["Skin Irrit. 2, H315"])
            )
        );

    [Outside("CLP Annex I, Table 3.5.2, Table 3.7.2 (consolidated text), Table 3.6.2 (from memory)")]
    [Theory]
    [InlineData("Muta. 1B, H340", 0.099, "")]
    [InlineData("Muta. 1B, H340", 0.1, "Muta. 1B")]
    [InlineData("Muta. 2, H341", 0.99, "")]
    [InlineData("Muta. 2, H341", 1, "Muta. 2")]
    [InlineData("Carc. 1B, H350", 0.1, "Carc. 1B")]
    [InlineData("Carc. 2, H351", 0.99, "")]
    [InlineData("Carc. 2, H351", 1, "Carc. 2")]
    [InlineData("Repr. 1B, H360", 0.299, "")]
    [InlineData("Repr. 1B, H360", 0.3, "Repr. 1B")]
    [InlineData("Repr. 2, H361d", 2.99, "")]
    [InlineData("Repr. 2, H361d", 3, "Repr. 2")]
    [InlineData("Lact., H362", 0.299, "")]
    [InlineData("Lact., H362", 0.3, "Lact.")]
    public void CarcinogensMutagensAndReproductiveToxicants(string hazard, double percent, string expected) =>
        Assert.Equal(expected, Bench.Codes(Bench.Line("a", percent, [hazard])));

    [Fact]
    public void EveryRuleNamesItsClauseAndConfidence() =>
        Assert.All(
            Bench.Eu.Rules,
            r =>
            {
                Assert.StartsWith("CLP Annex I, ", r.Clause, StringComparison.Ordinal);
                Assert.NotEmpty(r.Confidence);
            }
        );
}
