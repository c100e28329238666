using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Declared;
using Chandlery.Core.Notified;
using Chandlery.Core.Quantities;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>What a notification to the poison centres says of the ingredients.</summary>
public sealed class PoisonFactTests
{
    private static Substance Of(double low, double high, bool known, params string[] codes) =>
        new Substance
        {
            Ingredient = new ComposedIngredient(
                new SubstanceIdentity("Smoke", CasNumber.Parse("78-70-6").Value, null),
                new MassPercent(low),
                new MassPercent(high),
                new MassPercent(high),
                []
            ),
            IsKnown = known,
            Hazards =
            [
                .. codes
                    .Select(c => TestLaw.Lawbook.Vocabulary.Find(c)!)
                    .Select(c => new SubstanceHazard(c, c.Statement, "", 1, true, "test")),
            ],
            FromLimits = [],
            OwnLimits = [],
            Toxicity = [],
            Name = "Smoke",
            NonAdditiveKind = null,
            Remarks = [],
        };

    private static PoisonFact? Fact(double low, double high, params string[] codes) =>
        PoisonFacts.Ingredients(TestLaw.Eu.PoisonCentres!, [Of(low, high, true, codes)]).SingleOrDefault();

    [Theory]
    [InlineData("Acute Tox. 1 (oral)", true)]
    [InlineData("Acute Tox. 2 (dermal)", true)]
    [InlineData("Acute Tox. 3 (inhalation)", true)]
    [InlineData("Acute Tox. 4 (oral)", false)]
    [InlineData("STOT SE 1", true)]
    [InlineData("STOT SE 2", true)]
    [InlineData("STOT SE 3 (narcotic effects)", false)]
    [InlineData("STOT RE 1", true)]
    [InlineData("STOT RE 2", true)]
    [InlineData("Skin Corr. 1B", true)]
    [InlineData("Eye Dam. 1", true)]
    [InlineData("Muta. 2", false)]
    [InlineData("Carc. 1B", false)]
    [InlineData("Repr. 2", false)]
    [InlineData("Resp. Sens. 1", false)]
    [InlineData("Skin Sens. 1A", false)]
    [InlineData("Eye Irrit. 2", false)]
    [InlineData("Aquatic Chronic 1", false)]
    [Outside("CLP Annex VIII, Part B, 3.4.1 with Tables 1 and 2, consolidated text of 1 May 2026")]
    public void Of_major_concern_means_the_narrow_ranges(string code, bool major) =>
        Assert.Equal(major ? "25 - 30 % (the sheet's range is wider: ask the supplier)" : "10 - 30 %", Fact(10, 30, code)!.Band);

    [Fact]
    public void One_class_of_major_concern_is_enough() =>
        Assert.StartsWith("25 - 30 %", Fact(10, 30, "Skin Sens. 1", "Eye Dam. 1")!.Band, StringComparison.Ordinal);

    [Theory]
    [InlineData("Eye Dam. 1", 26, 30, "26 - 30 %")]
    [InlineData("Eye Dam. 1", 25, 30, "25 - 30 %")]
    [InlineData("Eye Dam. 1", 20, 30, "25 - 30 % (the sheet's range is wider: ask the supplier)")]
    [InlineData("Eye Dam. 1", 20, 25, "20 - 25 %")]
    [InlineData("Eye Dam. 1", 9, 10, "9 - 10 %")]
    [InlineData("Eye Dam. 1", 8, 10, "8 - 10 %")]
    [InlineData("Eye Dam. 1", 0.5, 1, "0.5 - 1 %")]
    [InlineData("Eye Dam. 1", 0, 0.1, "0 - 0.1 %")]
    [InlineData("Skin Sens. 1", 5, 25, "5 - 25 %")]
    [InlineData("Eye Dam. 1", 20, 24.9, "21.9 - 24.9 % (the sheet's range is wider: ask the supplier)")]
    [InlineData("Skin Sens. 1", 5, 10, "5 - 10 %")]
    [InlineData("Skin Sens. 1", 0, 1, "0 - 1 %")]
    [InlineData("Skin Sens. 1", 3, 3, "3 %")]
    [Outside("CLP Annex VIII, Part B, 3.4.1 and 3.4.2, Tables 1 and 2 (widths and edges), consolidated text of 1 May 2026")]
    public void A_range_is_no_wider_than_allowed_and_holds_the_high_end(string code, double low, double high, string band) =>
        Assert.Equal(band, Fact(low, high, code)!.Band);

    [Theory]
    [InlineData(0.1, true, "Skin Sens. 1")]
    [InlineData(0.09, true, "Skin Sens. 1")]
    [InlineData(0.001, true, "Skin Sens. 1")]
    [InlineData(0.1, true, "Aquatic Chronic 1", "Skin Sens. 1")]
    [InlineData(0.99, false, "Aquatic Chronic 1")]
    [InlineData(1, true, "Aquatic Chronic 1")]
    [InlineData(0.99, false)]
    [InlineData(1, true)]
    [Outside(
        "CLP Annex VIII, Part B, 3.3(1) (hazardous ones under 0.1 % too unless shown to be irrelevant; others from 1 %), consolidated text of 1 May 2026"
    )]
    public void Small_shares_are_left_out_by_hazard(double share, bool named, params string[] codes) =>
        Assert.Equal(named, Fact(share, share, codes) is not null);

    [Fact]
    public void What_nobody_knows_is_named_as_if_it_were_hazardous()
    {
        PoisonFact fact = PoisonFacts.Ingredients(TestLaw.Eu.PoisonCentres!, [Of(0, 0.5, false)]).Single();
        Assert.Equal(("unknown", "0.2 - 0.5 % (the sheet's range is wider: ask the supplier)"), (fact.Hazards, fact.Band));
        Assert.Equal(("Smoke", "78-70-6", (string?)null), (fact.Name, fact.Cas, fact.Ec));
        Assert.Equal("Skin Sens. 1, Eye Irrit. 2", Fact(2, 2, "Skin Sens. 1", "Eye Irrit. 2")!.Hazards);
    }

    [Theory]
    [InlineData(30, 31.5, false)]
    [InlineData(30, 31.6, true)]
    [InlineData(25, 27.5, false)]
    [InlineData(25, 27.6, true)]
    [InlineData(10, 12, false)]
    [InlineData(10, 7.9, true)]
    [InlineData(2.5, 3.25, false)]
    [InlineData(2.5, 3.3, true)]
    [Outside(
        "CLP Annex VIII, Part B, Table 4: 5 % above 25, 10 % above 10 to 25, 20 % above 2.5 to 10, 30 % up to 2.5, relative, consolidated text of 1 May 2026"
    )]
    public void An_update_is_due_when_a_share_moves_too_far(double before, double after, bool due) =>
        Assert.Equal(
            due,
            NotificationUpdate.Reasons(TestLaw.Eu.PoisonCentres!, [new("Smoke", new(before))], [new("Smoke", new(after))]).Any()
        );

    [Fact]
    [Outside("CLP Annex VIII, Part A, 4.2 and 5: an ingredient added, replaced or removed asks for a new UFI")]
    public void An_ingredient_that_comes_or_goes_asks_for_an_update() =>
        Assert.Equal(
            ["Smoke is gone", "Fog is new"],
            NotificationUpdate.Reasons(TestLaw.Eu.PoisonCentres!, [new("Smoke", new(1))], [new("Fog", new(1))])
        );
}
