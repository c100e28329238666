using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Classified;
using Chandlery.Core.Judged;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

public class SubstanceListTests
{
    private static string Classes(string cas) =>
        string.Join(
            "; ",
            TestLaw
                .Lawbook.Substances.Entries.First(e => e.CasNumbers.Contains(cas))
                .Claims!.Select(c => $"{c.Category.Code} {c.Statement}")
        );

    [Outside("CLP Annex VI, Table 3, 601-096-00-2 (17th ATP); Skin Sens. 1B verified in ECHA's table of comments, the rest from memory")]
    [Fact]
    public void DLimonene()
    {
        Assert.Equal(
            "Flam. Liq. 3 H226; Asp. Tox. 1 H304; Skin Irrit. 2 H315; Skin Sens. 1B H317; Aquatic Acute 1 H400; Aquatic Chronic 3 H412",
            Classes("5989-27-5")
        );
    }

    [Outside("CLP Annex VI, Table 3, 601-029-00-7 (chemical data pages)")]
    [Fact]
    public void Dipentene() =>
        Assert.Equal(
            "Flam. Liq. 3 H226; Skin Irrit. 2 H315; Skin Sens. 1 H317; Aquatic Acute 1 H400; Aquatic Chronic 1 H410",
            Classes("138-86-3")
        );

    [Outside("CLP Annex VI, Table 3, 603-235-00-2: opinion of ECHA's committee, 2015")]
    [Fact]
    public void Linalool() => Assert.Equal("Skin Sens. 1B H317", Classes("78-70-6"));

    [Outside("CLP Annex VI, Table 3, isoeugenol: Skin Sens. 1A (committee opinion of 10 March 2016); limit 0.01 % from memory")]
    [Fact]
    public void Isoeugenol()
    {
        Assert.Equal("Skin Sens. 1A H317", Classes("97-54-1"));
        Assert.Equal(0.01, TestLaw.Lawbook.Substances.Entries.First(e => e.CasNumbers.Contains("97-54-1")).Limits.Single().From.Value);
    }

    [Outside("CLP Art. 4(3): the harmonised class binds; a supplier cannot go below it")]
    [Fact]
    public void AHarmonisedClassOverridesAWeakerOneAndSaysSo()
    {
        Substance s = TestLaw
            .Eu.On(TestLaw.Today)
            .Judge(TestLaw.Mixture(TestLaw.Line("Isoeugenol", 0.02, ["Skin Sens. 1B, H317"], cas: "97-54-1")))
            .Substances[1];
        Assert.Equal("Skin Sens. 1A", s.Hazards.Single().Category.Code);
        Assert.Contains(s.Remarks, r => r.Contains("harmonised class Skin Sens. 1A", StringComparison.Ordinal));
    }

    [Fact]
    public void ASupplierMayBeStricterThanTheList()
    {
        Substance s = TestLaw
            .Eu.On(TestLaw.Today)
            .Judge(TestLaw.Mixture(TestLaw.Line("Linalool", 2, ["Skin Sens. 1A, H317"], cas: "78-70-6")))
            .Substances[1];
        Assert.Equal("Skin Sens. 1A", s.Hazards.Single().Category.Code);
    }
}
