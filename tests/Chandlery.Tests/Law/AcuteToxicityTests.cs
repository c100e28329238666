using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Core.Law;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

public class AcuteToxicityTests
{
    private static Ingredient Oral(string name, double percent, double ate, string? hazard = null) =>
        Bench.Line(name, percent, hazard is null ? [] : [hazard], ate: [new ToxicityEstimate(ExposureRoute.Oral, ate)]);

    private static string Codes(Edition edition, params Ingredient[] lines)
    {
        Chandlery.Core.Composed.Composition c = Bench.Mixture(lines);
        return string.Join(", ", Bench.Law(edition).Judge(c).Classification.Classes.Select(x => x.Category.Code));
    }

    [Outside("CLP Annex I, Table 3.1.1: upper bounds are inclusive (official presentations)")]
    [Theory]
    [InlineData(5, "Acute Tox. 1 (oral)")]
    [InlineData(5.01, "Acute Tox. 2 (oral)")]
    [InlineData(50, "Acute Tox. 2 (oral)")]
    [InlineData(50.1, "Acute Tox. 3 (oral)")]
    [InlineData(300, "Acute Tox. 3 (oral)")]
    [InlineData(301, "Acute Tox. 4 (oral)")]
    [InlineData(2000, "Acute Tox. 4 (oral)")]
    [InlineData(2001, "")]
    public void OralBounds(double ate, string expected) => Assert.Equal(expected, Codes(Bench.Eu, Oral("a", 100, ate)));

    [Outside("CLP Annex I, Table 3.1.1, dermal and vapour (official presentations)")]
    [Theory]
    [InlineData(ExposureRoute.Dermal, 50, "Acute Tox. 1 (dermal)")]
    [InlineData(ExposureRoute.Dermal, 200, "Acute Tox. 2 (dermal)")]
    [InlineData(ExposureRoute.Dermal, 1000, "Acute Tox. 3 (dermal)")]
    [InlineData(ExposureRoute.Dermal, 2000, "Acute Tox. 4 (dermal)")]
    [InlineData(ExposureRoute.Dermal, 2001, "")]
    [InlineData(ExposureRoute.InhalationVapour, 0.5, "Acute Tox. 1 (inhalation)")]
    [InlineData(ExposureRoute.InhalationVapour, 2, "Acute Tox. 2 (inhalation)")]
    [InlineData(ExposureRoute.InhalationVapour, 10, "Acute Tox. 3 (inhalation)")]
    [InlineData(ExposureRoute.InhalationVapour, 20, "Acute Tox. 4 (inhalation)")]
    [InlineData(ExposureRoute.InhalationVapour, 20.1, "")]
    [InlineData(ExposureRoute.InhalationDust, 0.05, "Acute Tox. 1 (inhalation)")]
    [InlineData(ExposureRoute.InhalationDust, 1, "Acute Tox. 3 (inhalation)")]
    [InlineData(ExposureRoute.InhalationDust, 5, "Acute Tox. 4 (inhalation)")]
    [InlineData(ExposureRoute.InhalationDust, 5.1, "")]
    public void OtherBounds(ExposureRoute route, double ate, string expected) =>
        Assert.Equal(expected, Codes(Bench.Eu, Bench.Line("a", 100, [], ate: [new ToxicityEstimate(route, ate)])));

    // 100 / (16/1600 + 4/860 + 80/3450) = 2640 mg/kg: category 5 of the GHS. CLP has no category 5 and leaves the third
    // ingredient out: 100 / (16/1600 + 4/860) = 6825.
    [Outside("UN GHS, worked example for the additivity formula (16 % of LD50 1600, 4 % of 860, 80 % of 3450; from memory)")]
    [Fact]
    public void WorkedExampleOfTheAdditivityFormula()
    {
        Ingredient[] mixture = [Oral("1", 16, 1600, "Acute Tox. 4, H302"), Oral("2", 4, 860, "Acute Tox. 4, H302"), Oral("3", 80, 3450)];
        Assert.Equal("", Codes(Bench.Eu, mixture));
        Assert.Equal("Acute Tox. 5 (oral)", Codes(Bench.Lawbook.Edition("un-ghs"), mixture));
    }

    [Outside("CLP Annex I, Table 3.1.2: point estimates 0.5 / 5 / 100 / 500 (US information sheet)")]
    [Theory]
    [InlineData("Acute Tox. 3, H301", 33.4, "Acute Tox. 3 (oral)")]
    [InlineData("Acute Tox. 3, H301", 5.01, "Acute Tox. 4 (oral)")]
    [InlineData("Acute Tox. 3, H301", 4.99, "")]
    [InlineData("Acute Tox. 4, H302", 25.1, "Acute Tox. 4 (oral)")]
    [InlineData("Acute Tox. 4, H302", 24.9, "")]
    [InlineData("Acute Tox. 2, H300", 0.26, "Acute Tox. 4 (oral)")]
    public void ACategoryCountsWithItsPointEstimate(string hazard, double percent, string expected) =>
        Assert.Equal(expected, Codes(Bench.Eu, Bench.Line("a", percent, [hazard])));

    [Outside("CLP Annex I, 3.1.3.6.2.3: more than 10 % unknown is taken out of the hundred")]
    [Fact]
    public void MuchUnknownToxicityIsTakenOutOfTheHundred()
    {
        // 24 % of category 4 alone: 100 x 500 / 24 = 2083, no class. With 12 % unknown: 88 x 500 / 24 = 1833, category 4.
        Ingredient known = Bench.Line("a", 24, ["Acute Tox. 4, H302"]);
        Assert.Equal("", Codes(Bench.Eu, known, Bench.Line("b", 12, [])));
        Ingredient unknown = Bench.Line("b", 12, []) with { Claims = null };
        Assert.Equal("Acute Tox. 4 (oral)", Codes(Bench.Eu, known, unknown));
    }

    [Outside("CLP Annex I, 3.1.3.6.2.2: the label states unknown toxicity from 1 % on (from memory; form verified for the UN GHS)")]
    [Theory]
    [InlineData(0.99, false)]
    [InlineData(1, true)]
    public void UnknownToxicityIsStated(double percent, bool stated) =>
        Assert.Equal(stated, Bench.Classify(Bench.Line("b", percent, []) with { Claims = null }).UnknownToxicity is not null);

    [Fact]
    public void AClassCountsEvenWhenTheSheetsEstimateIsMilder() =>
        Assert.Equal("Acute Tox. 4 (oral)", Codes(Bench.Eu, Oral("a", 100, 2500, "Acute Tox. 4, H302")));
}
