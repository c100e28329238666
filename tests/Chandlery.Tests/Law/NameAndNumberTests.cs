using Chandlery.Core.Assessed;
using Chandlery.Core.Classified;
using Chandlery.Core.Declared;
using Chandlery.Core.Judged;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>Lines of sheets without a number, and names and numbers that do not belong together.</summary>
public sealed class NameAndNumberTests
{
    private static Ingredient Line(string name, double percent, string[] classes, string? cas = null, string? ec = null) =>
        TestLaw.Line(name, percent, classes) with
        {
            Identity = new SubstanceIdentity(
                name,
                cas is null ? null : CasNumber.Parse(cas).Value,
                ec is null ? null : EcNumber.Parse(ec).Value
            ),
        };

    private static Verdict Judge(params Ingredient[] lines) => TestLaw.Eu.On(TestLaw.Today).Judge(TestLaw.Mixture(lines));

    private static IReadOnlyList<string> Remarks(Ingredient line) =>
        Judge(line).Substances.Single(s => s.Ingredient.Identity == line.Identity).Remarks;

    private static IEnumerable<string> Wrong(Ingredient line) =>
        Remarks(line).Where(r => r.Contains("one of the two is wrong", StringComparison.Ordinal));

    [Theory]
    [Outside(
        "CLP Art. 4(3) and Annex VI, Part 3, Table 3, consolidated text of 1 May 2026: 606-155-00-6 (from 0.01 %), 606-153-00-5 (Carc. 1B), 608-067-00-3 (Muta. 1B), 601-096-00-2; shares of Tables 3.4.5, 3.5.2, 3.6.2"
    )]
    [InlineData("Cinnamal", 0.018, "Skin Sens. 1, H317", "Skin Sens. 1A")]
    [InlineData("Cinnamaldehyde", 0.018, "Skin Sens. 1, H317", "Skin Sens. 1A")]
    [InlineData("Benzophenone", 0.18, null, "Carc. 1B")]
    [InlineData("benzo-PHENONE", 0.18, null, "Carc. 1B")]
    [InlineData("Geranyl nitrile", 0.18, null, "Muta. 1B")]
    [InlineData("3,7-dimethylocta-2,6-dienenitrile", 0.18, null, "Muta. 1B")]
    [InlineData("(R)-p-mentha-1,8-diene", 2, null, "Skin Sens. 1B")]
    public void A_name_without_a_number_gets_the_classes_of_the_entry_that_has_it(string name, double percent, string? said, string gets)
    {
        Ingredient line = Line(name, percent, said is null ? [] : [said]);
        Assert.Contains(gets, Judge(line).Classification.Classes.Select(c => c.Category.Code));
        Assert.Contains(Remarks(line), r => r.Contains("no number is declared", StringComparison.Ordinal));
    }

    [Fact]
    [Outside("CLP Annex VI, Part 3, Table 3: 601-029-00-7 (Aquatic Chronic 1) and 601-096-00-2 (Aquatic Chronic 3) both hold a limonene")]
    public void A_name_of_several_substances_gets_the_worst_of_them()
    {
        Ingredient line = Line("Limonene", 1, []);
        Substance limonene = Judge(line).Substances.Single(s => s.Ingredient.Identity == line.Identity);
        Assert.Contains(limonene.Hazards, h => h.Category.Code == "Aquatic Chronic 1");
        Assert.Equal(("Limonene", NameOrigin.Table), (limonene.Name, limonene.NameOrigin));
        Assert.Contains(limonene.Remarks, r => r.Contains("several substances go by that name", StringComparison.Ordinal));
    }

    [Fact]
    public void A_draft_is_told_of_a_name_without_a_number() =>
        Assert.Contains(
            Remarks(Line("Piperonal", 1, ["Skin Sens. 1B, H317"])),
            r => r.Contains("expected, not law and not applied: Repr. 1B", StringComparison.Ordinal)
        );

    [Fact]
    public void A_name_that_no_list_has_is_told_to_be_looked_up_nowhere()
    {
        Assert.Contains(Remarks(Line("Nobody's own aldehyde", 1, [])), r => r.Contains("could not be looked up", StringComparison.Ordinal));
        Assert.DoesNotContain(Remarks(Line("Linalyl acetate", 1, [])), r => r.Contains("no number", StringComparison.Ordinal));
        Assert.DoesNotContain(
            Remarks(Line("Nobody's own aldehyde", 1, [], cas: "77-93-0")),
            r => r.Contains("no number", StringComparison.Ordinal)
        );
    }

    [Fact]
    [Outside("CLP Annex II, 2.12: EUH212 from 1 % of titanium dioxide, by whichever name or number it is declared")]
    public void What_an_ingredient_puts_on_the_label_is_found_without_its_CAS_number()
    {
        foreach (Ingredient line in new[] { Line("Titanium dioxide", 1, []), Line("White", 1, [], ec: "236-675-5") })
        {
            Assert.Contains(Judge(line).Label.Supplemental, s => s.Code.Text == "EUH212");
        }
    }

    [Fact]
    [Outside("CLP Annex VI, 606-155-00-6: Skin Sens. 1A from 0.01 %, which 0.006 % twice is more than")]
    public void Lines_that_may_be_one_substance_and_are_not_added_stop_the_sale()
    {
        Verdict apart = Judge(Line("Cinnamal", 0.006, []), Line("3-phenylprop-2-enal", 0.006, [], cas: "104-55-2"));
        Finding stop = Assert.Single(UnnumberedTwins.Of(apart));
        Assert.Equal(Gravity.Stop, stop.Gravity);
        Assert.StartsWith(
            "Cinnamal has no CAS number and may be the same substance as 3-phenylprop-2-enal",
            stop.What,
            StringComparison.Ordinal
        );
        Assert.Empty(UnnumberedTwins.Of(Judge(Line("Cinnamal", 0.006, []), Line("Linalool", 0.006, [], cas: "78-70-6"))));
        Assert.Empty(UnnumberedTwins.Of(Judge(Line("Cinnamal", 0.006, []), Line("Cinnamal", 0.006, [], cas: "104-55-2"))));
    }

    [Theory]
    [Outside("EC Inventory numbers of CLP Annex VI, Part 3, Table 3: citral 226-394-6, geraniol 203-377-1")]
    [InlineData("Citral", null, "203-377-1", "Citral goes by EC number")]
    [InlineData("Geraniol", null, "226-394-6", "Geraniol goes by EC number 203-377-1")]
    [InlineData("Citral", "5392-40-5", "203-377-1", "EC number 203-377-1, which goes with CAS number 106-24-1")]
    [InlineData("Anything", "5392-40-5", "203-377-1", "EC number 203-377-1, which goes with CAS number 106-24-1")]
    [InlineData("alpha-Pinene", "127-91-3", null, "alpha-Pinene goes by CAS number 80-56-8")]
    [InlineData("Lavender oil", "8014-09-3", null, "Lavender oil goes by CAS number 8000-28-0")]
    public void A_name_or_number_of_another_substance_is_told(string name, string? cas, string? ec, string says) =>
        Assert.Contains(Wrong(Line(name, 1, [], cas, ec)), r => r.Contains(says, StringComparison.Ordinal));

    [Theory]
    [Outside(
        "CLP Annex VI, Part 3, Table 3: numbers of one entry (606-155-00-6, 605-040-00-8, 601-029-00-7); Annex III of Regulation (EC) No 1223/2009 as Regulation (EU) 2023/1545 left it: numbers of one row; the notified draft of the 24th ATP: both numbers of tea tree oil"
    )]
    [InlineData("Cinnamal", "14371-10-9", null)]
    [InlineData("HICC", "130066-44-3", null)]
    [InlineData("Limonene", "6876-12-6", null)]
    [InlineData("Tea tree oil", "85085-48-9", null)]
    [InlineData("Lavender oil", "90063-37-9", null)]
    [InlineData("Lavender oil", "8000-28-0", "289-995-2")]
    [InlineData("Lavender oil", null, "289-995-2")]
    [InlineData("Lemon oil", "84929-31-7", null)]
    [InlineData("Patchouli oil", "84238-39-1", null)]
    [InlineData("Clove oil", "84961-50-2", null)]
    [InlineData("Rose oil", "90106-38-0", null)]
    [InlineData("Eucalyptus oil", "84625-32-1", null)]
    [InlineData("Sweet orange oil", "8008-57-9", null)]
    [InlineData("alpha-Pinene", "7785-70-8", null)]
    [InlineData("Citral", null, "226-394-6")]
    public void Numbers_that_the_law_puts_in_one_row_are_no_contradiction(string name, string? cas, string? ec) =>
        Assert.Empty(Wrong(Line(name, 1, [], cas, ec)));

    [Theory]
    [Outside(
        "Annex III of Regulation (EC) No 1223/2009, as Regulation (EU) 2023/1545 left it: names of rows 91, 92, 347 to 367, and 8028-48-6 in two of them"
    )]
    [InlineData("Lavender Oil", "8000-28-0", "Lavandula Oil/Extract", NameOrigin.CosmeticsLaw)]
    [InlineData("Oakmoss Absolute", "90028-68-5", "Evernia Prunastri Extract", NameOrigin.CosmeticsLaw)]
    [InlineData("Treemoss", "90028-67-4", "Evernia Furfuracea Extract", NameOrigin.CosmeticsLaw)]
    [InlineData("Patchouli", "8014-09-3", "Pogostemon Cablin Oil", NameOrigin.CosmeticsLaw)]
    [InlineData("Clove bud oil", "8000-34-8", "Eugenia Caryophyllus Oil", NameOrigin.CosmeticsLaw)]
    [InlineData("Sweet Orange Oil", "8028-48-6", "Sweet Orange Oil", NameOrigin.Trade)]
    [InlineData("Citrus Aurantium Peel Oil", "8028-48-6", "Citrus Aurantium Peel Oil", NameOrigin.CosmeticsLaw)]
    [InlineData("beta-Pinene", "127-91-3", "beta-Pinene", NameOrigin.Trade)]
    [InlineData("Zimtaldehyd", "104-55-2", "Cinnamal", NameOrigin.Table)]
    public void An_extract_is_printed_by_its_international_name(string printed, string cas, string name, NameOrigin origin)
    {
        Ingredient line = Line(printed, 1, [], cas);
        Substance substance = Judge(line).Substances.Single(s => s.Ingredient.Identity == line.Identity);
        Assert.Equal((name, origin), (substance.Name, substance.NameOrigin));
    }
}
