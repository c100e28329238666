using System.Collections.Concurrent;
using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>Assesses everything in a folder at once; what is wrong with one candle does not hide the others.</summary>
public static class CatalogueRun
{
    /// <summary>One entry for each candle and batch of a catalogue, in the order of the files.</summary>
    public static IReadOnlyList<CatalogueEntry<T>> Assess<T>(
        Catalogue catalogue,
        Lawbook lawbook,
        DateOnly asOf,
        string? onlyPlace,
        Func<Assessment, T> keep
    ) => Assess(catalogue, [.. catalogue.OfKind<Candle>(), .. catalogue.OfKind<Batch>()], lawbook, asOf, onlyPlace, keep);

    /// <summary>One entry for each of some candles and batches.</summary>
    /// <param name="catalogue">The declarations.</param>
    /// <param name="asked">The candles and batches.</param>
    /// <param name="lawbook">The law.</param>
    /// <param name="asOf">The day whose law holds.</param>
    /// <param name="onlyPlace">One place of sale, or null for each candle's own.</param>
    /// <param name="keep">Takes from an assessment what is wanted.</param>
    /// <param name="done">Told how many are done; called from several threads.</param>
    public static IReadOnlyList<CatalogueEntry<T>> Assess<T>(
        Catalogue catalogue,
        IReadOnlyList<IDeclaration> asked,
        Lawbook lawbook,
        DateOnly asOf,
        string? onlyPlace,
        Func<Assessment, T> keep,
        Action<int>? done = null
    )
    {
        var entries = new CatalogueEntry<T>[asked.Count];
        var assessor = new Assessor(lawbook, catalogue, asOf);
        int finished = 0;
        Each(
            asked.Count,
            i =>
            {
                entries[i] = Entry(assessor, asked[i], onlyPlace, keep);
                done?.Invoke(Interlocked.Increment(ref finished));
            }
        );
        return entries;
    }

    /// <summary>The entry of one candle or batch.</summary>
    internal static CatalogueEntry<T> Entry<T>(Assessor assessor, IDeclaration declaration, string? onlyPlace, Func<Assessment, T> keep)
    {
        var problems = new Problems();
        IReadOnlyList<Assessment> assessments = assessor.Assess(declaration, onlyPlace, problems);
        return new CatalogueEntry<T>(declaration.Id, declaration.Place, [.. assessments.Select(keep)], problems.None ? [] : problems.Found);
    }

    /// <summary>Does a work for each number from 0, on several threads, each taking a stretch of them.</summary>
    internal static void Each(int count, Action<int> work)
    {
        if (count == 0)
        {
            return;
        }

        Parallel.ForEach(
            Partitioner.Create(0, count),
            range =>
            {
                for (int i = range.Item1; i < range.Item2; i++)
                {
                    work(i);
                }
            }
        );
    }
}
