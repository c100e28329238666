using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Making;
using Chandlery.Files;
using Chandlery.Tests.Support;
using Chandlery.Yaml;

namespace Chandlery.Tests.Files;

public sealed class CatalogueTests
{
    private static Catalogue Demo() => DeclarationFolder.Open(TestLaw.DemoFolder, TestLaw.Lawbook.Vocabulary).Catalogue;

    private static IReadOnlyList<CatalogueEntry<CandleState>> Assess(Catalogue catalogue, DateOnly? asOf = null) =>
        CatalogueRun.Assess(catalogue, TestLaw.Lawbook, asOf ?? TestLaw.Today, null, CandleState.Of);

    private static Catalogue With(string id, Func<string, string> edit)
    {
        Catalogue demo = Demo();
        IDeclaration old = demo.All.Single(d => d.Id == id);
        var problems = new Problems();
        IDeclaration changed = new DeclarationReader(TestLaw.Lawbook.Vocabulary).Read(
            edit(File.ReadAllText(old.Place.File)),
            old.Place.File,
            id,
            problems
        )!;
        Assert.Empty(problems.Found);
        return new Catalogue(demo.All.Select(d => d == old ? changed : d), problems);
    }

    [Fact]
    public void A_new_oil_revision_shows_which_candles_change_and_why()
    {
        IReadOnlyList<CandleChange> changes = StateComparison.Compare(
            Assess(Demo()),
            Assess(With("cedar-smoke", t => t.Replace("share: 2.5 - <5 %", "share: 5 - <10 %", StringComparison.Ordinal)))
        );
        Assert.Equal(["breakwater-pillar", "harbour-bowl", "hb-2611"], changes.Select(c => c.Id));
        CandleChange bowl = changes.Single(c => c.Id == "harbour-bowl");
        Assert.Equal(["named substance", "poison centres"], bowl.Changes.Select(c => c.Subject));
        StateChange named = bowl.Changes[0];
        Assert.Equal(("named substance", true, "Eugenol"), (named.Subject, named.Begins, named.Text));
        Assert.Contains("0.1 %", named.Why, StringComparison.Ordinal);
        Assert.Contains("Eugenol goes from", bowl.Changes[1].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_changed_wax_limit_and_a_later_law_show_too()
    {
        IReadOnlyList<CandleChange> wax = StateComparison.Compare(
            Assess(Demo()),
            Assess(With("soy-flake", t => t.Replace("percent: 10, of: wax", "percent: 4, of: wax", StringComparison.Ordinal)))
        );
        Assert.Contains(wax, c => c.Id == "fig-tin" && c.Changes.Any(x => x.Subject == "broken limit" && x.Begins));
        IReadOnlyList<CandleChange> law = StateComparison.Compare(Assess(Demo()), Assess(Demo(), new DateOnly(2028, 2, 1)));
        Assert.Contains(law, c => c.Changes.Any(x => x.Subject == "least label"));
    }

    [Fact]
    public void Nothing_changes_between_equal_states() => Assert.Empty(StateComparison.Compare(Assess(Demo()), Assess(Demo())));

    [Fact]
    public void An_error_in_one_candle_does_not_hide_the_others()
    {
        IReadOnlyList<CatalogueEntry<CandleState>> entries = Assess(
            With("fig-tin", t => t.Replace("wax: soy-flake", "wax: soy-flaky", StringComparison.Ordinal))
        );
        Assert.Contains("Did you mean 'soy-flake'", entries.Single(e => e.Id == "fig-tin").Problems[0].Remedy, StringComparison.Ordinal);
        Assert.All(entries.Where(e => e.Id != "fig-tin"), e => Assert.NotEmpty(e.Results));
        IReadOnlyList<CandleChange> changes = StateComparison.Compare(Assess(Demo()), entries);
        Assert.Contains("cannot be assessed after", changes.Single(c => c.Id == "fig-tin").Remark, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pouring_plan_adds_up_and_scales()
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        Wax wax = Demo().OfKind<Wax>().Single(w => w.Id == a.Candle.Wax.Id);
        PouringPlan plan = PouringPlan.Make(a, wax, 6, 3);
        Assert.Equal(2900 * 6 * 1.03, plan.Total.Value, 6);
        Assert.Equal(plan.Total.Value, plan.FirstPour.Concat(plan.TopUp).Sum(p => p.Mass.Value), 6);
        Assert.Equal(2900, plan.FirstPourEach.Value + plan.TopUpEach.Value, 9);
        Assert.Equal(0.12, plan.TopUpEach.Value / 2900, 9);
        double waxes = plan.FirstPour.Where(p => p.Kind == "wax").Sum(p => p.Mass.Value);
        double oils = plan.FirstPour.Where(p => p.Kind == "fragrance oil").Sum(p => p.Mass.Value);
        Assert.Equal(0.08, oils / waxes, 9);
        Assert.Equal(3, PouringPlan.Make(a, wax, 12, 3).Total.Value / PouringPlan.Make(a, wax, 4, 3).Total.Value, 9);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(12)]
    [InlineData(40)]
    [InlineData(90)]
    public void No_number_of_wicks_is_met_with_a_larger_one(int wicks)
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        Wax wax = Demo().Find<Wax>(a.Candle.Wax, new Problems())!;
        Assessment many = a with { Candle = a.Candle with { Wicks = a.Candle.Wicks with { Count = wicks } } };
        WickPlan plan = PouringPlan.Make(many, wax, 1, 0).Wicks;
        Assert.Equal(plan.Spacing!.Value.Value < 30, plan.Note.Contains("Use fewer wicks.", StringComparison.Ordinal));
        Assert.DoesNotMatch(@"[0-9]+ wicks|fewer than", plan.Note);
    }

    [Fact]
    public void Filling_counts_the_headspace_and_the_shrinking()
    {
        Assessment a = TestLaw.Demo("candles/harbour-bowl.yaml");
        Wax wax = Demo().OfKind<Wax>().Single(w => w.Id == a.Candle.Wax.Id);
        FillPlan fill = PouringPlan.Make(a, wax, 1, 0).Fill;
        Assert.Equal(2900 / 0.83, fill.Hot!.Value.Value, 6);
        Assert.Equal(2900 / 0.91, fill.Cold!.Value.Value, 6);
        Assert.Equal(4200 - (Math.PI * 130 * 130 * 12 / 1000), fill.Room!.Value.Value, 6);
        Assert.Equal(100 * (1 - (0.83 / 0.91)), fill.ShrinkPercent!.Value, 6);
    }
}
