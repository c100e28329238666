using Chandlery.Core.Hazards;

namespace Chandlery.Core.Classified;

/// <summary>
/// The substances of a candle, sorted by hazard once, so that each rule looks only at the substances that it counts.
/// Not for use by several threads at a time.
/// </summary>
public sealed class MixtureIndex
{
    private readonly int[] starts;
    private readonly (int Substance, SubstanceHazard Hazard)[] entries;
    private readonly int[] seen;
    private int round;

    /// <summary>Sorts the substances.</summary>
    /// <param name="substances">All substances of a candle.</param>
    /// <param name="highestCategory">The highest number of a hazard category that will be asked for.</param>
    public MixtureIndex(IReadOnlyList<Substance> substances, int highestCategory)
    {
        Substances = substances;
        seen = new int[substances.Count];
        int categories = CountCategories(substances, highestCategory);
        starts = new int[categories + 1];
        int total = 0;
        for (int s = 0; s < substances.Count; s++)
        {
            total += substances[s].Hazards.Count + substances[s].FromLimits.Count;
            CountStarts(substances[s].Hazards);
            CountStarts(substances[s].FromLimits);
        }

        for (int c = 0; c < categories; c++)
        {
            starts[c + 1] += starts[c];
        }

        entries = new (int, SubstanceHazard)[total];
        Span<int> next = categories <= 512 ? stackalloc int[categories] : new int[categories];
        starts.AsSpan(0, categories).CopyTo(next);
        for (int s = 0; s < substances.Count; s++)
        {
            Fill(s, substances[s].Hazards, next);
            Fill(s, substances[s].FromLimits, next);
        }
    }

    /// <summary>The substances.</summary>
    public IReadOnlyList<Substance> Substances { get; }

    /// <summary>The substances that have a hazard, with that hazard.</summary>
    public ReadOnlySpan<(int Substance, SubstanceHazard Hazard)> With(HazardCategory hazard) =>
        entries.AsSpan(starts[hazard.Index]..starts[hazard.Index + 1]);

    // Categories are numbered by the vocabulary; substances may have some that no rule names.
    private static int CountCategories(IReadOnlyList<Substance> substances, int highest)
    {
        for (int s = 0; s < substances.Count; s++)
        {
            highest = Math.Max(highest, Math.Max(Highest(substances[s].Hazards), Highest(substances[s].FromLimits)));
        }

        return highest + 1;
    }

    private static int Highest(IReadOnlyList<SubstanceHazard> hazards)
    {
        int highest = 0;
        for (int h = 0; h < hazards.Count; h++)
        {
            highest = Math.Max(highest, hazards[h].Category.Index);
        }

        return highest;
    }

    private void CountStarts(IReadOnlyList<SubstanceHazard> hazards)
    {
        for (int h = 0; h < hazards.Count; h++)
        {
            starts[hazards[h].Category.Index + 1]++;
        }
    }

    private void Fill(int substance, IReadOnlyList<SubstanceHazard> hazards, Span<int> next)
    {
        for (int h = 0; h < hazards.Count; h++)
        {
            entries[next[hazards[h].Category.Index]++] = (substance, hazards[h]);
        }
    }

    /// <summary>Starts a round in which each substance counts once.</summary>
    public void StartRound() => round++;

    /// <summary>True the first time in this round that the substance is asked for.</summary>
    public bool First(int substance)
    {
        if (seen[substance] == round)
        {
            return false;
        }

        seen[substance] = round;
        return true;
    }
}
