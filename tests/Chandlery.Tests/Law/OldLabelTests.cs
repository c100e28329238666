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
}
