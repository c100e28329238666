using Chandlery.Core.Asked.Comparisons;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law;

/// <summary>How long labels of the state before may go on when a candle changes.</summary>
public sealed class OldLabelTests
{
    private static IReadOnlyList<StateChange> Changes(string on, string subject, string before, string after)
    {
        CandleState now = CandleState.Of(TestLaw.Demo("candles/slate-jar.yaml", "IE", DateOnly.ParseExact(on, "yyyy-MM-dd")));
        CandleState With(string text) =>
            now with
            {
                Subjects = new Dictionary<string, IReadOnlyList<Fact>> { [subject] = [new Fact(text, "test")] },
            };
        CatalogueEntry<CandleState> Entry(CandleState state) => new(state.Id, new("test", 1, 1), [state], []);
        return StateComparison.Compare([Entry(With(before))], [Entry(With(after))]).Single().Changes;
    }

    [Theory]
    [InlineData("2027-12-31", "class", null)]
    [InlineData("2028-01-01", "class", "until 2028-07-01")]
    [InlineData("2028-01-01", "named substance", "until 2029-07-01")]
    [InlineData("2028-01-01", "broken limit", null)]
    [Outside(
        "CLP Art. 30, as replaced by Regulation (EU) 2024/2865 (from 1 January 2028 by Regulation (EU) 2025/2439): 6 months where graver, 18 otherwise"
    )]
    public void Old_labels_have_a_last_day(string on, string subject, string? says)
    {
        StateChange? old = Changes(on, subject, "old", "new").SingleOrDefault(c => c.Subject == "old labels");
        Assert.Equal(says is not null, old is not null);
        Assert.StartsWith(says ?? "", old?.Text ?? "", StringComparison.Ordinal);
    }

    // The maker's folder with an oil that holds one substance, on two days of the law.
    private static StateChange OldLabels(string line, string place, string before, string after)
    {
        using var folder = new MakersFolder();
        folder.Write(
            "oils/rain-on-slate.yaml",
            $"""
            declares: oil
            name: Rain on Slate
            supplier: Morrow and Quill, Port Aldrin
            document: SDS MQ-0561, version 2
            revised: 2026-06-30
            ingredients:
              - {line}
            """
        );
        CatalogueEntry<CandleState> On(string day)
        {
            CandleState state = CandleState.Of(folder.Assess("slate-jar", place, DateOnly.ParseExact(day, "yyyy-MM-dd")));
            return new(state.Id, new("test", 1, 1), [state], []);
        }

        return StateComparison.Compare([On(before)], [On(after)]).Single().Changes.Single(c => c.Subject == "old labels");
    }

    [Theory]
    [InlineData("2026-11-26", "2027-02-01")]
    [InlineData("2026-11-26", "2028-06-01")]
    [Outside(
        "Delegated Regulation (EU) 2025/1222 (23rd ATP), Art. 2: applies from 1 February 2027; methyl oct-2-ynoate becomes Skin Sens. 1A"
    )]
    public void An_act_that_changes_a_class_ends_old_labels_on_its_own_day(string before, string after)
    {
        StateChange old = OldLabels(
            "{ name: Methyl oct-2-ynoate, cas: 111-12-6, ec: 203-836-6, share: 100 %, classes: not classified }",
            "IE",
            before,
            after
        );
        Assert.Equal("until 2027-01-31", old.Text);
        Assert.StartsWith("Delegated Regulation (EU) 2025/1222, 23rd ATP; ", old.Why, StringComparison.Ordinal);
        Assert.Contains("also what was made or placed on the market before", old.Why, StringComparison.Ordinal);
    }

    [Fact]
    [Outside(
        "CLP Annex I, 3.11.2 and 4.3.2.3, by Delegated Regulation (EU) 2023/707: new mixtures from 1 May 2026, those on the market before until 1 May 2028"
    )]
    public void Stock_has_the_time_that_the_act_gives_it()
    {
        StateChange old = OldLabels("{ name: Lasting stuff, share: 100 %, classes: [\"PBT, EUH440\"] }", "IE", "2026-04-30", "2026-05-01");
        Assert.Equal("until 2026-04-30, and until 2028-04-30 on what was placed on the market before 2026-05-01", old.Text);
    }
}
