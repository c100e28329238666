namespace Chandlery.Core.Asked.Trials;

/// <summary>
/// Finds the nearest of all blends in whole steps that keeps to what is asked, or shows that none is nearer than one that is known.
/// Boxes of blends are looked at in the order of what they exchange at least, and halved. A box is left out where the least that any
/// of its blends has of each oil, with nothing in the place of the rest, already misses something: more of an oil never ends a class,
/// a name, a broken limit or a cost.
/// </summary>
/// <param name="own">The blend to begin with, in steps; together <see cref="StepsInWhole"/>.</param>
/// <param name="leastKeeps">Whether so much of each oil, and nothing else of any, keeps to everything.</param>
/// <param name="keeps">Whether a whole blend keeps to everything.</param>
internal sealed class BlendSearch(
    IReadOnlyList<double> own,
    Func<IReadOnlyList<int>, bool> leastKeeps,
    Func<IReadOnlyList<int>, bool> keeps
)
{
    /// <summary>Hundredths of a percent.</summary>
    public const int StepsInWhole = 10_000;

    // What a maker waits for: a few seconds.
    private const int MostLooks = 12_000;

    // Less than this, in steps, is the computer's own rounding.
    private const double Rounding = 1e-6;

    /// <summary>The nearest blend that is nearer than a bound.</summary>
    /// <param name="exchanged">The bound, in steps.</param>
    /// <returns>Its shares in steps, null where none was found; and whether no blend in whole steps is nearer than it, or than the bound.</returns>
    public (IReadOnlyList<int>? Shares, bool IsProven) NearerThan(double exchanged)
    {
        var queue = new PriorityQueue<BlendBox, (double Exchanged, int Width)>();
        Add(new BlendBox([.. own.Select(_ => 0)], [.. own.Select(_ => StepsInWhole)]));
        for (int looks = 0; queue.TryDequeue(out BlendBox? box, out _); looks++)
        {
            if (looks == MostLooks)
            {
                return (null, false);
            }

            if (box.IsOneBlend)
            {
                if (keeps(box.Least))
                {
                    return (box.Least, true);
                }
            }
            else if (leastKeeps(box.Least))
            {
                foreach (BlendBox half in box.Halves())
                {
                    Add(half);
                }
            }
        }

        return (null, true);

        void Add(BlendBox box)
        {
            if (box.Reachable(StepsInWhole) is { } reachable && reachable.ExchangedFrom(own) is var least && least < exchanged - Rounding)
            {
                queue.Enqueue(reachable, (least, reachable.Width));
            }
        }
    }
}
