using Chandlery.Core.Asked.Comparisons;
using Chandlery.Core.Assessed;
using Chandlery.Core.Declared;
using Chandlery.Core.Declared.Reading;
using Chandlery.Core.Law;
using Chandlery.Yaml;

namespace Chandlery.Files;

/// <summary>
/// Reads and assesses a folder of thousands of candles without keeping them: oils, waxes and vessels are read first, then each
/// candle is read, assessed and let go.
/// </summary>
public static class FolderRun
{
    /// <summary>Assesses a candle or batch, or all of a folder.</summary>
    /// <param name="path">A folder, or a candle's or batch's file.</param>
    /// <param name="lawbook">The law.</param>
    /// <param name="asOf">The day whose law holds.</param>
    /// <param name="onlyPlace">One place of sale, or null for each candle's own.</param>
    /// <param name="keep">Takes from an assessment what is wanted.</param>
    /// <param name="done">Told how many of how many are done; called from several threads.</param>
    public static FolderEntries<T> Assess<T>(
        string path,
        Lawbook lawbook,
        DateOnly asOf,
        string? onlyPlace,
        Func<Assessment, T> keep,
        Action<int, int>? done = null
    )
    {
        FolderEntries<T>? run =
            Directory.Exists(path) && DeclarationFolder.RootOf(path) == path ? Stream(path, lawbook, asOf, onlyPlace, keep, done) : null;
        return run ?? Whole(path, lawbook, asOf, onlyPlace, keep, done);
    }

    private static FolderEntries<T> Whole<T>(
        string path,
        Lawbook lawbook,
        DateOnly asOf,
        string? onlyPlace,
        Func<Assessment, T> keep,
        Action<int, int>? done
    )
    {
        DeclarationFolder folder = DeclarationFolder.Open(path, lawbook.Vocabulary);
        int count = folder.Asked.Count;
        IReadOnlyList<CatalogueEntry<T>> entries = CatalogueRun.Assess(
            folder.Catalogue,
            folder.Asked,
            lawbook,
            asOf,
            onlyPlace,
            keep,
            done is null ? null : finished => done(finished, count)
        );
        return new FolderEntries<T>(entries, FolderReport.Of(folder, [.. entries.SelectMany(e => e.Problems)]));
    }

    // Null when something is said of a candle that takes the other candles to know, so that all of them are needed.
    private static FolderEntries<T>? Stream<T>(
        string root,
        Lawbook lawbook,
        DateOnly asOf,
        string? onlyPlace,
        Func<Assessment, T> keep,
        Action<int, int>? done
    )
    {
        var folderProblems = new Problems();
        IReadOnlyList<string> files = DeclarationFiles.Of(root, folderProblems);
        var reader = new DeclarationReader(lawbook.Vocabulary);
        var read = new IDeclaration?[files.Count];
        var isCandle = new bool[files.Count];
        var wrong = new ReadDeclaration?[files.Count];
        CatalogueRun.Each(
            files.Count,
            i =>
            {
                isCandle[i] = DeclarationFiles.StartsAsCandle(files[i]);
                if (!isCandle[i])
                {
                    read[i] = Read(files[i], reader, holdsText: false, ref wrong[i]);
                    isCandle[i] = read[i] is Candle;
                }
            }
        );
        List<string> candles = [.. files.Where((_, i) => isCandle[i]).Select(f => Path.GetFileNameWithoutExtension(f)!)];
        List<Batch> batches = [.. read.OfType<Batch>()];
        if (candles.Count + batches.Count == 0 || candles.Distinct().Count() < candles.Count)
        {
            return null;
        }

        HashSet<string> poured = [.. batches.Select(b => b.Candle.Id)];
        var catalogue = new Catalogue(
            read.OfType<IDeclaration>().Where(d => d is not Candle),
            folderProblems,
            wrong.OfType<ReadDeclaration>().Select(w => w.Wrong!)
        );
        var assessor = new Assessor(lawbook, catalogue, asOf);
        var entries = new CatalogueEntry<T>?[files.Count];
        var numbers = new long?[files.Count];
        int count = candles.Count + batches.Count;
        int finished = 0;
        CatalogueRun.Each(
            files.Count,
            i =>
            {
                if (!isCandle[i])
                {
                    return;
                }

                if ((read[i] ?? Read(files[i], reader, holdsText: true, ref wrong[i])) is Candle candle)
                {
                    entries[i] = CatalogueRun.Entry(assessor, candle, onlyPlace, keep);
                    numbers[i] = candle.FormulationNumber;
                    read[i] = poured.Contains(candle.Id) ? candle : null;
                }

                done?.Invoke(Interlocked.Increment(ref finished), count);
            }
        );
        List<Candle> kept = [.. read.OfType<Candle>()];

        // Candles of one formulation number are compared with each other.
        List<long> given = [.. numbers.OfType<long>()];
        if (kept.Count < poured.Count || given.Distinct().Count() < given.Count)
        {
            return null;
        }

        IReadOnlyList<CatalogueEntry<T>> batchEntries = CatalogueRun.Assess(
            new Catalogue([.. catalogue.All, .. kept], new Problems(), catalogue.Wrong),
            batches,
            lawbook,
            asOf,
            onlyPlace,
            keep,
            _ => done?.Invoke(Interlocked.Increment(ref finished), count)
        );
        List<CatalogueEntry<T>> all = [.. entries.OfType<CatalogueEntry<T>>(), .. batchEntries];
        return new FolderEntries<T>(
            all,
            new FolderReport(
                [
                    .. wrong.OfType<ReadDeclaration>().SelectMany(w => w.Problems),
                    .. folderProblems.Found,
                    .. all.SelectMany(e => e.Problems).Distinct(),
                ],
                []
            )
        );
    }

    private static IDeclaration? Read(string file, DeclarationReader reader, bool holdsText, ref ReadDeclaration? wrong)
    {
        ReadDeclaration read = DeclarationFiles.Read(file, file, reader, holdsText);
        wrong = read.Wrong is null ? null : read;
        return read.Declaration;
    }
}
