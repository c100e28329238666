using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Declared;
using Chandlery.Core.Hazards;
using Chandlery.Files;
using Chandlery.Intake.Wording;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Intake;

public sealed class WordingTests
{
    private static readonly SheetWording Wording = SheetWording.Read(
        TestLaw.Lawbook.Vocabulary,
        ShippedFiles.Data(null, new Problems()),
        new Problems()
    );
    private static readonly HazardText Hazards = new(TestLaw.Lawbook.Vocabulary, Wording);

    [Theory]
    [InlineData("Skin Sens. 1B - H317", "Skin Sens. 1B, H317")]
    [InlineData("Skin Sens 1B; H317 (M=1)", "Skin Sens. 1B, H317")]
    [InlineData("Skin Sens.1B H317, Aquatic Chronic 2 H411", "Skin Sens. 1B, H317|Aquatic Chronic 2, H411")]
    [InlineData("Skin Sens. 1B; Aquatic Chronic 2 ; H317; H411", "Skin Sens. 1B, H317|Aquatic Chronic 2, H411")]
    [InlineData("H317 Skin Sens. 1B, H411 Aquatic Chronic 2", "Skin Sens. 1B, H317|Aquatic Chronic 2, H411")]
    [InlineData("Acute Tox. 4 *, H302; Acute Tox. 4, H332", "Acute Tox. 4, H302|Acute Tox. 4, H332")]
    [InlineData("Skin sensitisation, Category 1A, H317", "Skin Sens. 1A, H317")]
    [InlineData("Sensibilisierung der Haut, Kategorie 1, H317", "Skin Sens. 1, H317")]
    [InlineData("Sensibilisation cutanée, catégorie 1B, H317", "Skin Sens. 1B, H317")]
    [InlineData("Skin corrosion/irritation (Category 2), H315", "Skin Irrit. 2, H315")]
    [InlineData("Repr. 2, H361d", "Repr. 2, H361d")]
    [InlineData("Eye Dam. 1, H318 Dgr GHS05", "Eye Dam. 1, H318")]
    [InlineData("Aquatic Chronic 3", "Aquatic Chronic 3, H412")]
    [InlineData("STOT SE 3 Repr. 1B ; H33 6 H360F d", "STOT SE 3, H336|Repr. 1B, H360Fd")]
    [InlineData("Repr. 2 ; H36 1d EUH06 6", "Repr. 2, H361d|EUH066")]
    public void Classes_are_read_in_every_order_and_dress(string text, string classes)
    {
        HazardReading read = Hazards.Read(text);
        Assert.Equal(classes, string.Join('|', read.Classes!));
        Assert.Empty(read.Doubts);
    }

    [Theory]
    [InlineData("Skin Sens. 1B, H315")]
    [InlineData("H317")]
    [InlineData("Skin Sens. 1B, H317, foo bar")]
    [InlineData("Skin Irrit. 2 H315 H999")]
    [InlineData("Acute Tox. 4")]
    [InlineData("Aquatic Acute 1, H400 M = 3")]
    public void What_is_incomplete_or_not_understood_is_doubted(string text) => Assert.NotEmpty(Hazards.Read(text).Doubts);

    [Theory]
    [InlineData("not classified")]
    [InlineData("Nicht eingestuft")]
    [InlineData("non classé")]
    public void Not_classified_is_an_empty_list(string text) => Assert.Empty(Hazards.Read(text).Classes!);

    [Theory]
    [InlineData("")]
    [InlineData("-")]
    [InlineData("n/a")]
    public void Silence_is_unknown_and_never_harmless(string text) => Assert.Null(Hazards.Read(text).Classes);

    [Theory]
    [InlineData("M = 10", 10d, 10d)]
    [InlineData("M-factor (acute) = 10; M-factor (chronic) = 1", 10d, 1d)]
    [InlineData("M-Faktor (akut): 1", 1d, null)]
    [InlineData("M(chronic)=100", null, 100d)]
    [InlineData("Facteur M (aigu) : 10 Facteur M (chronique) : 1", 10d, 1d)]
    public void M_factors_are_read(string text, double? acute, double? chronic)
    {
        HazardReading read = Hazards.Read("Aquatic Acute 1, H400; " + text);
        Assert.Equal((acute, chronic), (read.M!.Acute, read.M.Chronic));
        Assert.Empty(read.Doubts);
    }

    [Fact]
    public void A_bare_figure_is_an_M_factor_only_in_its_own_column()
    {
        Assert.Equal(10, Hazards.Read("10", bareM: true).M!.Acute);
        Assert.Null(Hazards.Read("10").M);
    }

    [Theory]
    [InlineData("ATE (oral): 500 mg/kg", ExposureRoute.Oral, 500)]
    [InlineData("oral: ATE = 1230 mg/kg bw", ExposureRoute.Oral, 1230)]
    [InlineData("ATE (dermal) = 1100 mg/kg", ExposureRoute.Dermal, 1100)]
    [InlineData("ATE (inhalation, vapours) = 11 mg/l", ExposureRoute.InhalationVapour, 11)]
    [InlineData("ATE (inhalation, dust/mist): 1,5 mg/l", ExposureRoute.InhalationDust, 1.5)]
    public void Estimates_keep_their_route_and_unit(string text, ExposureRoute route, double value)
    {
        ToxicityEstimate estimate = Assert.Single(Hazards.Read("Acute Tox. 4, H302; " + text).Toxicity);
        Assert.Equal((route, value), (estimate.Route, estimate.Value));
    }

    [Theory]
    [InlineData("ATE (oral) > 2000 mg/kg")]
    [InlineData("ATE (oral) = 1,230 mg/kg")]
    [InlineData("ATE (oral) = 11 mg/l")]
    public void Bounds_and_ambiguous_figures_are_no_estimates(string text)
    {
        HazardReading read = Hazards.Read(text);
        Assert.Empty(read.Toxicity);
        Assert.NotEmpty(read.Doubts);
    }

    [Theory]
    [InlineData("Skin Sens. 1A; H317: C ≥ 0,01 %", "Skin Sens. 1A, H317: C >= 0.01 %")]
    [InlineData("Skin Irrit. 2; H315: 1 % ≤ C < 5 %", "Skin Irrit. 2, H315: 1 % <= C < 5 %")]
    [InlineData("C >= 0.1 %: Skin Sens. 1, H317", "Skin Sens. 1, H317: C >= 0.1 %")]
    public void Specific_limits_are_read_with_their_class(string text, string limit)
    {
        HazardReading read = Hazards.Read(text);
        Assert.Equal(limit, Assert.Single(read.Limits));
        Assert.Null(read.Classes);
    }

    [Theory]
    [InlineData("1 - 5", 1, 5)]
    [InlineData(">= 1 - < 5 %", 1, 5)]
    [InlineData("<1", 0, 1)]
    [InlineData("1-<2.5", 1, 2.5)]
    [InlineData("2,5 – 10", 2.5, 10)]
    [InlineData("≥ 0,1 – < 1 %", 0.1, 1)]
    [InlineData("1 to 5 % w/w", 1, 5)]
    [InlineData("1 bis 5", 1, 5)]
    [InlineData("1 à 5 %", 1, 5)]
    [InlineData("max. 3", 0, 3)]
    [InlineData("bis zu 3 %", 0, 3)]
    [InlineData("jusqu'à 3 %", 0, 3)]
    [InlineData("1% - 5%", 1, 5)]
    public void Shares_are_read_in_all_their_dresses(string text, double low, double high)
    {
        DeclaredRange range = DeclaredRange.Parse(ShareText.Parse(text, Wording).Value).Value;
        Assert.Equal((low, high), (range.Low.Value, range.High.Value));
    }

    [Theory]
    [InlineData("0,055", false)]
    [InlineData("0,125 - 0,25", false)]
    [InlineData("1,593", true)]
    [InlineData("1,593 %", false)]
    public void A_comma_before_three_figures_is_doubted_where_a_thousand_could_begin(string text, bool doubted) =>
        Assert.Equal(doubted, ShareText.Read(text, Wording, false).Value.Doubts.Count > 0);

    [Theory]
    [InlineData("trace")]
    [InlineData("5 - 1")]
    [InlineData("1,000")]
    [InlineData("120")]
    [InlineData("1 5")]
    [InlineData("3 <5")]
    public void What_is_no_share_is_not_guessed(string text) => Assert.False(ShareText.Parse(text, Wording).Success);

    [Theory]
    [InlineData("2026-02-10", "2026-02-10", false)]
    [InlineData("10.02.2026", "2026-02-10", false)]
    [InlineData("10/02/2026", "2026-02-10", true)]
    [InlineData("25/02/2026", "2026-02-25", false)]
    [InlineData("02/25/2026", "2026-02-25", false)]
    [InlineData("10 February 2026", "2026-02-10", false)]
    [InlineData("10. März 2026", "2026-03-10", false)]
    [InlineData("1er août 2026", "2026-08-01", false)]
    [InlineData("10-Feb-2026", "2026-02-10", false)]
    [InlineData("February 10, 2026", "2026-02-10", false)]
    public void Dates_are_read_and_ambiguous_ones_doubted(string text, string day, bool doubted)
    {
        PrintedDay? found = DateText.Find(text, Wording);
        Assert.Equal((DateOnly.ParseExact(day, "yyyy-MM-dd", null), doubted), (found?.Day, found?.Doubt is not null));
    }

    [Theory]
    [InlineData("Classification according to Regulation (EC) No 1272/2008 [CLP]", "classes")]
    [InlineData("Specific Conc. Limits, M-factors and ATEs", "limits,m,ate")]
    [InlineData("CAS No. / EC No.", "cas,ec")]
    [InlineData("Conc. (% w/w)", "share")]
    [InlineData("Weight %", "share")]
    [InlineData("Product identifier", "name")]
    [InlineData("REACH registration no.", "")]
    [InlineData("Einstufung nach Verordnung (EG) Nr. 1272/2008", "classes")]
    [InlineData("Teneur (%)", "share")]
    public void Headings_tell_what_a_column_holds(string heading, string kinds)
    {
        IEnumerable<string> found = Chandlery.Intake.Tables.ColumnKind.Of(heading, Wording).Where(k => k != "ignored");
        Assert.Equal(kinds.Split(',', StringSplitOptions.RemoveEmptyEntries).Order(), found.Order());
    }
}
