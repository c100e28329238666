namespace Chandlery.Tests.SecondCalculation;

/// <summary>A small generator of random numbers (SplitMix64), the same on every machine for the same seed.</summary>
internal sealed class Dice
{
    private ulong state;

    /// <summary>Starts at a seed; the seed is mixed first, or neighbouring seeds would give the same numbers one step apart.</summary>
    public Dice(int seed)
    {
        state = Mixed(unchecked((ulong)seed * 0xD1342543DE82EF95UL) + 1);
    }

    /// <summary>True with this probability, 0 to 1.</summary>
    public bool Falls(double probability) => Fraction() < probability;

    /// <summary>One of these.</summary>
    public T Pick<T>(IReadOnlyList<T> from) => from[Below(from.Count)];

    /// <summary>A whole number from 0 on, below <paramref name="end"/>.</summary>
    public int Below(int end) => (int)(Fraction() * end);

    /// <summary>Evenly spread between the two on a logarithmic scale.</summary>
    public double Logarithmic(double low, double high) => low * Math.Pow(high / low, Fraction());

    /// <summary>The same in another order.</summary>
    public List<T> Shuffle<T>(IEnumerable<T> items) =>
        [.. items.Select(i => (Item: i, Key: Fraction())).OrderBy(i => i.Key).Select(i => i.Item)];

    /// <summary>From 0 on, below 1.</summary>
    public double Fraction()
    {
        state = unchecked(state + 0x9E3779B97F4A7C15UL);
        return (Mixed(state) >> 11) / (double)(1UL << 53);
    }

    private static ulong Mixed(ulong value)
    {
        unchecked
        {
            value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9UL;
            value = (value ^ (value >> 27)) * 0x94D049BB133111EBUL;
            return value ^ (value >> 31);
        }
    }
}
