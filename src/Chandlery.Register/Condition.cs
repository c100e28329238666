namespace Chandlery.Register;

/// <summary>What entries must have to be found: one of several values. Their numbers are read in order, a stretch at a time.</summary>
/// <param name="store">The database.</param>
/// <param name="values">The values.</param>
/// <param name="latestFirst">Whether numbers come from the latest to the oldest.</param>
internal sealed class Condition(RegisterStore store, IReadOnlyList<INumbers> values, bool latestFirst)
{
    private const int FirstStretch = 16;
    private const int LongestStretch = 1024;
    private IReadOnlyList<long> stretch = [];
    private int at;
    private bool isLast;
    private int length = FirstStretch;

    /// <summary>The first number from one on, in the order asked for; null when there is none.</summary>
    public long? Seek(long from)
    {
        while (true)
        {
            while (at < stretch.Count && (latestFirst ? stretch[at] > from : stretch[at] < from))
            {
                at++;
            }

            if (at < stretch.Count)
            {
                return stretch[at];
            }

            if (isLast)
            {
                return null;
            }

            Read(from);
        }
    }

    // Each value gives its next numbers; the first of them all together are the next of the condition.
    private void Read(long from)
    {
        stretch = values is [var only] ? only.Read(store, from, latestFirst, length) : Merged(from);
        isLast = stretch.Count < length;
        at = 0;
        length = Math.Min(length * 4, LongestStretch);
    }

    private List<long> Merged(long from)
    {
        var next = new SortedSet<long>();
        foreach (INumbers value in values)
        {
            next.UnionWith(value.Read(store, from, latestFirst, length));
        }

        return [.. (latestFirst ? next.Reverse() : next).Take(length)];
    }
}
