namespace Chandlery.Core.Asked.Trials;

/// <summary>All blends of some oils whose shares lie between two bounds, in whole steps.</summary>
/// <param name="Least">The least of each oil, in steps.</param>
/// <param name="Most">The most of each oil, in steps.</param>
internal sealed record BlendBox(IReadOnlyList<int> Least, IReadOnlyList<int> Most)
{
    /// <summary>True when there is one blend only.</summary>
    public bool IsOneBlend => Least.SequenceEqual(Most);

    /// <summary>How wide it is, in steps, over all oils.</summary>
    public int Width => Most.Sum() - Least.Sum();

    /// <summary>The same blends within bounds that each can be reached, since shares make a whole; null when there is none.</summary>
    /// <param name="whole">Steps in a whole.</param>
    public BlendBox? Reachable(int whole)
    {
        int least = Least.Sum();
        int most = Most.Sum();
        if (least > whole || most < whole)
        {
            return null;
        }

        return new BlendBox(
            [.. Least.Select((l, i) => Math.Max(l, whole - (most - Most[i])))],
            [.. Most.Select((m, i) => Math.Min(m, whole - (least - Least[i])))]
        );
    }

    /// <summary>Its two halves across the oil whose bounds lie farthest apart.</summary>
    public IEnumerable<BlendBox> Halves()
    {
        int[] widths = [.. Most.Zip(Least, (m, l) => m - l)];
        int across = Array.IndexOf(widths, widths.Max());
        int middle = Least[across] + (widths[across] / 2);
        yield return this with
        {
            Most = [.. Most.Select((m, i) => i == across ? middle : m)],
        };
        yield return this with
        {
            Least = [.. Least.Select((l, i) => i == across ? middle + 1 : l)],
        };
    }

    /// <summary>How much must be exchanged at least to reach it from a blend, in steps.</summary>
    public double ExchangedFrom(IReadOnlyList<double> own) =>
        Math.Max(own.Zip(Least, (o, l) => Math.Max(0, l - o)).Sum(), own.Zip(Most, (o, m) => Math.Max(0, o - m)).Sum());
}
