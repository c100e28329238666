using System.Collections.Concurrent;
using Chandlery.Paper.Pdf;

namespace Chandlery.Tests.Pdf;

/// <summary>Pages are drawn side by side and written in their order.</summary>
public sealed class InTurnTests
{
    private static readonly int[] Numbers = [.. Enumerable.Range(0, 1000)];

    [Fact]
    public void What_came_of_things_is_taken_in_their_order_and_never_twice_at_once()
    {
        var taken = new List<string>();
        int taking = 0;
        InTurn.Each(
            Numbers,
            n =>
            {
                Thread.SpinWait(n % 7 * 200);
                return n.ToString(System.Globalization.CultureInfo.InvariantCulture);
            },
            text =>
            {
                Assert.Equal(1, Interlocked.Increment(ref taking));
                taken.Add(text);
                Interlocked.Decrement(ref taking);
            }
        );
        Assert.Equal(Numbers.Select(n => n.ToString(System.Globalization.CultureInfo.InvariantCulture)), taken);
    }

    [Fact]
    public void Whoever_calls_works_itself()
    {
        var workers = new ConcurrentDictionary<int, string>();
        InTurn.Each(Numbers, n => workers.GetOrAdd(Environment.CurrentManagedThreadId, "worked"), _ => { });
        Assert.Contains(Environment.CurrentManagedThreadId, workers.Keys);
    }

    [Fact]
    public void What_goes_wrong_with_one_is_told()
    {
        AggregateException told = Assert.Throws<AggregateException>(() =>
            InTurn.Each(Numbers, n => n == 500 ? throw new InvalidDataException("the 500th") : "", _ => { })
        );
        Assert.Contains(told.InnerExceptions, e => e.Message == "the 500th");
    }
}
